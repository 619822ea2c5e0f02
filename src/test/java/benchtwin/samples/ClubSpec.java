package benchtwin.samples;

import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import benchtwin.club.LengthMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What a player ordered, and the days the club was on the bench. */
final class ClubSpec {

    /**
     * A day on the bench.
     * @param date    the day, year-month-day
     * @param state   the club's state that day
     * @param setting the sleeve's setting; empty without a sleeve
     * @param read    whether it was measured, or only looked at
     * @param note    what was written beside it
     */
    record Day(String date, ClubState state, String setting, boolean read, String note) {
    }

    final String tag;
    final String player;
    final Hand hand;
    final HeadLine line;
    final String size;
    final ShaftLine shaft;
    final double lengthIn;
    final List<Day> days = new ArrayList<>();
    double tipCutIn;
    Optional<String> sleeve = Optional.empty();
    Grips.Kind grip = Grips.MOSS;
    double swingWeightPoints = 32.5;
    LengthMethod lengthMethod = LengthMethod.AXIS;
    boolean lieRead = true;
    boolean overGrip = true;
    Consumer<HeadDraft> head = draft -> { };
    Consumer<ShaftDraft> shaftStory = draft -> { };

    ClubSpec(String tag, String player, Hand hand, HeadLine line, String size, ShaftLine shaft, double lengthIn) {
        this.tag = tag;
        this.player = player;
        this.hand = hand;
        this.line = line;
        this.size = size;
        this.shaft = shaft;
        this.lengthIn = lengthIn;
    }

    ClubSpec sleeve(String name) {
        sleeve = Optional.of(name);
        return this;
    }

    ClubSpec tip(double cutIn) {
        tipCutIn = cutIn;
        return this;
    }

    ClubSpec grip(Grips.Kind kind) {
        grip = kind;
        return this;
    }

    ClubSpec swing(double points) {
        swingWeightPoints = points;
        return this;
    }

    ClubSpec head(Consumer<HeadDraft> story) {
        head = story;
        return this;
    }

    ClubSpec shaft(Consumer<ShaftDraft> story) {
        shaftStory = story;
        return this;
    }

    ClubSpec length(LengthMethod method) {
        lengthMethod = method;
        return this;
    }

    ClubSpec withoutLie() {
        lieRead = false;
        return this;
    }

    ClubSpec bareButt() {
        overGrip = false;
        return this;
    }

    ClubSpec day(String date, ClubState state, String setting, String note) {
        days.add(new Day(date, state, setting, true, note));
        return this;
    }

    ClubSpec inPlay(String date, String setting) {
        return day(date, ClubState.IN_PLAY, setting, "");
    }

    /** Looked at and put aside: nothing was measured. */
    ClubSpec damaged(String date, String setting, String note) {
        days.add(new Day(date, ClubState.DAMAGED, setting, false, note));
        return this;
    }
}
