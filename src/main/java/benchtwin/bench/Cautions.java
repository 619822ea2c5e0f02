package benchtwin.bench;

import benchtwin.club.Hazard;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Plan;
import benchtwin.match.ShaftAnswer;
import benchtwin.sets.SetAnswer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The cautions to print with work that can hurt somebody. */
public final class Cautions {

    private Cautions() {
    }

    /**
     * Cautions of everything an answer proposes.
     * @param answer the answer
     * @return lines; none when every step is harmless
     */
    public static List<String> of(MatchAnswer answer) {
        return of(answer.results().stream().map(option -> option.plan()).toList());
    }

    /**
     * Cautions of everything a choice of shafts proposes.
     * @param answer the answer
     * @return lines; none when every step is harmless
     */
    public static List<String> of(ShaftAnswer answer) {
        return of(answer.picks().stream().map(pick -> pick.option().plan()).toList());
    }

    /**
     * Cautions of everything a change proposes.
     * @param answer the answer
     * @return lines; none when every step is harmless
     */
    public static List<String> of(ChangeAnswer answer) {
        return of(answer.ways().stream().map(way -> way.option().plan()).toList());
    }

    /**
     * Cautions of everything a plan of sets proposes.
     * @param answer the answer
     * @return lines; none when every step is harmless
     */
    public static List<String> of(SetAnswer answer) {
        return of(answer.players().stream().flatMap(player -> player.clubs().stream()).flatMap(club -> club.build().stream())
            .map(build -> build.plan()).toList());
    }

    /**
     * Cautions of plans.
     * @param plans any plans
     * @return lines; none when every step is harmless
     */
    public static List<String> of(Collection<Plan> plans) {
        return ofHazards(plans.stream().flatMap(plan -> plan.hazards().stream()).toList());
    }

    /**
     * Cautions of work that is in no plan.
     * @param hazardous what in it can hurt somebody
     * @return lines; none when it is harmless
     */
    public static List<String> ofHazards(Collection<Hazard> hazardous) {
        List<Hazard> hazards = hazardous.stream().distinct().sorted().toList();
        List<String> lines = new ArrayList<>();
        if (!hazards.isEmpty()) {
            lines.add(Hazard.FIRST);
            hazards.forEach(hazard -> lines.add(hazard.caution()));
        }
        return lines;
    }
}
