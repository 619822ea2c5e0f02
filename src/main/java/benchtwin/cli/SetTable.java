package benchtwin.cli;

import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.match.Ranked;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.GroupFigures;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetPin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** One player's planned set: every club with its parts, its plan and what it will measure, then how alike they are. */
final class SetTable {

    private static final String INDENT = "    ";
    private static final int LONGEST_NAME = 16;
    private static final int MISS_WIDTH = 6;

    private final Page page;
    private final PlayerSet set;
    private final List<SetPin> pins;
    private final boolean steps;

    /**
     * @param page  where
     * @param set   the player's set
     * @param pins  choices fixed by hand, anybody's
     * @param steps whether every step of every club is printed under it, with where its parts lie
     */
    SetTable(Page page, PlayerSet set, List<SetPin> pins, boolean steps) {
        this.page = page;
        this.set = set;
        this.pins = pins;
        this.steps = steps;
    }

    void print() {
        heading();
        int name = set.clubs().stream().mapToInt(club -> club.wanted().club().length()).filter(w -> w <= LONGEST_NAME).max()
            .orElse(LONGEST_NAME);
        SetColumns columns = new SetColumns(set.clubs(), Page.WIDTH - name - MISS_WIDTH);
        line("club", name, columns.titles(), "miss");
        for (ClubOfSet club : set.clubs()) {
            String called = club.wanted().club();
            if (called.length() > name) {
                page.wrapped("", called);
                called = "";
            }
            if (club.build().isPresent()) {
                built(club, club.build().get(), called, name, columns);
            } else {
                unbuilt(club, called, name);
            }
            if (steps) {
                page.blank();
            }
        }
        set.groups().forEach(this::figures);
    }

    private void heading() {
        double minutes = set.clubs().stream().flatMap(club -> club.build().stream()).mapToDouble(b -> b.plan().minutes()).sum();
        int built = set.clubs().size() - set.unbuilt();
        List<String> said = new ArrayList<>();
        int wanted = set.clubs().size();
        said.add((built == wanted ? "" : built + " of ") + (wanted == 1 ? "1 club" : wanted + " clubs"));
        if (built > 0) {
            said.add(set.outOfTolerance() == 0 ? "all inside tolerance" : set.outOfTolerance() + " out of tolerance");
            said.add("worst miss %s tol".formatted(Figures.fixed(set.worstMiss(), 2)));
            said.add(Figures.time(minutes) + " at the bench");
        }
        set.clubs().stream().flatMap(club -> club.wanted().neededBy().stream()).min(Comparator.naturalOrder())
            .ifPresent(day -> said.add("needed" + Page.NO_BREAK + "by" + Page.NO_BREAK + day));
        page.wrapped("", set.player() + "   " + String.join(", ", said));
        page.line("%s", "─".repeat(Page.WIDTH));
    }

    private void line(String club, int width, String cells, String miss) {
        page.line("%s", (pad(club, width) + cells + String.format(Locale.ROOT, "%" + MISS_WIDTH + "s", miss)).stripTrailing());
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void built(ClubOfSet club, Ranked build, String called, int width, SetColumns columns) {
        line(called, width, columns.cells(club), Figures.fixed(build.miss(), 2));
        String also = columns.beside(club);
        page.wrapped(INDENT, "%s + %s: %s%s".formatted(head(club, build.head()), shaft(club, build.shaft()),
            PlanInShort.of(build), also.isEmpty() ? "" : "; " + also));
        RulesLines.print(page, INDENT, build.rulesWarnings());
        if (steps) {
            page.wrapped(INDENT, "Head %s (%s), %s; shaft %s (%s), %s.".formatted(build.head().tag(), build.head().model(),
                place(build.head().keeping().place()), build.shaft().tag(), build.shaft().model(),
                place(build.shaft().keeping().place())));
            StepLines.print(page, INDENT, build.plan());
            page.wrapped(INDENT, "Ready in %s. Right the first time, swing weight aside: %s.%s".formatted(
                Figures.time(build.plan().readyMinutes()), Figures.chance(build.firstTimeRight().all()),
                build.defaultsUsed().isEmpty() ? "" : " Rests on a default: " + String.join("; ", build.defaultsUsed()) + "."));
        }
    }

    private static String place(Optional<String> place) {
        return place.orElse("place not recorded");
    }

    private Optional<SetPin> pin(ClubOfSet club) {
        return pins.stream().filter(pin -> pin.player().equals(set.player()) && pin.club().equals(club.wanted().club()))
            .findFirst();
    }

    private String head(ClubOfSet club, Head head) {
        return head.tag() + (pin(club).flatMap(SetPin::head).isPresent() ? Page.NO_BREAK + "(pinned)" : "");
    }

    private String shaft(ClubOfSet club, Shaft shaft) {
        return shaft.tag() + (pin(club).flatMap(SetPin::shaft).isPresent() ? Page.NO_BREAK + "(pinned)" : "");
    }

    private void unbuilt(ClubOfSet club, String called, int width) {
        page.wrapped(pad(called, width) + "  ", "not built: " + club.unbuilt().orElseThrow().reason() + (club.pinned()
            ? " (it has a pin)" : ""));
        club.unbuilt().orElseThrow().substitute().ifPresent(near -> page.wrapped(INDENT,
            "nearest of what is left: %s + %s, miss %s tol%s".formatted(near.head().tag(), near.shaft().tag(),
                Figures.fixed(near.miss(), 2), near.outOfTolerance().isEmpty() ? "" : ", out of tolerance: "
                    + near.outOfTolerance().stream().map(q -> Figures.name(q) + " " + Figures.difference(q,
                        near.difference().get(q))).collect(Collectors.joining(", ")))));
    }

    private void figures(GroupFigures group) {
        if (group.built() == 0) {
            return;
        }
        List<String> said = new ArrayList<>();
        said.add(models("head", group.headModels()) + " and " + models("shaft", group.shaftModels()));
        group.frequencySpreadCpm().ifPresent(s -> said.add("frequencies within a spread of %s cpm of their line"
            .formatted(Figures.fixed(s, 2))));
        group.swingSpread().ifPresent(s -> said.add("%s %s %s".formatted(group.swing().map(Figures::name).orElse("swing"),
            Figures.fixed(s, 2), group.swing().map(q -> q.unit()).orElse(""))));
        group.shaftMassSpreadG().ifPresent(s -> said.add("raw shafts %s g".formatted(Figures.fixed(s, 2))));
        page.wrapped(INDENT, "%s (%d built): %s.".formatted(group.group(), group.built(), String.join(", ", said)));
    }

    private static String models(String part, List<String> models) {
        return models.size() == 1 ? "one %s model (%s)".formatted(part, models.get(0))
            : "%d %s models (%s)".formatted(models.size(), part, String.join(", ", models));
    }
}
