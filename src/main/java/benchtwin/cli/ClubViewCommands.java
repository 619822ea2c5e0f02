package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubHistory;
import benchtwin.bench.ClubJson;
import benchtwin.bench.ClubViews;
import benchtwin.bench.Pictures;
import benchtwin.bench.QuantityList;
import benchtwin.club.Timeline;
import benchtwin.match.Tolerances;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What {@code benchtwin club} shows. */
class ClubViewCommands extends CommandGroup {

    /** Shows a club. */
    @Command(name = "show", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Show a club: what it is made of and what it measures, today or on another day.",
        footer = {"", "Examples:", "  benchtwin club show OAKES-DR", "  benchtwin club show OAKES-DR --as-of 2026-05-03 --known-now"})
    public int show(@Parameters(paramLabel = "TAG", description = "the club's tag") String tag,
                    @Option(names = "--as-of", paramLabel = "DATE", description = "as it was known on that day") String asOf,
                    @Option(names = "--known-now", description = "with --as-of: what was true that day as it is known now, late "
                        + "entries and corrections included") boolean knownNow,
                    @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (knownNow && asOf == null) {
            throw new BadInput("--known-now goes with --as-of DATE");
        }
        ClubViews.Club club = ClubViews.show(book.there(), tag, when("--as-of", asOf, knownNow));
        if (output.isJson()) {
            out().println(ClubJson.text(club));
        } else {
            new ClubPage(output.page(out())).show(club, asOf == null ? "" : asOf.strip(), knownNow);
        }
        return Main.DONE;
    }

    /** Tells a club's history. */
    @Command(name = "history", mixinStandardHelpOptions = true,
        description = "Tell what befell a club and what it measured each time.",
        footer = {"", "Example:", "  benchtwin club history OAKES-DR --plot oakes.svg"})
    public int history(@Parameters(paramLabel = "TAG", description = "the club's tag") String tag,
                       @Option(names = "--plot", paramLabel = "FILE", description = "draw the readings over time into a file ending "
                           + "in .svg or .png") Path plot,
                       @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (plot != null) {
            Pictures.check(plot);
            Pictures.write(ClubHistory.picture(book.there(), tag, new Tolerances(Map.of(), Map.of())), plot);
        }
        Timeline timeline = ClubHistory.of(book.there(), tag);
        if (output.isJson()) {
            out().println(ClubJson.history(timeline));
        } else {
            new TimelinePage(output.page(out()), timeline).print();
        }
        return Main.DONE;
    }

    /** Compares. */
    @Command(name = "compare", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Two clubs side by side in tolerances, or one club on two days, with what differs beyond what measuring "
            + "explains.",
        footer = {"", "Examples:", "  benchtwin club compare OAKES-DR OAKES-DR-2",
            "  benchtwin club compare OAKES-DR OAKES-DR --as-of 2025-04-01 --known-now"})
    public int compare(@Parameters(index = "0", paramLabel = "A", description = "the club held to") String a,
                       @Parameters(index = "1", arity = "0..1", paramLabel = "B", description = "the other; without it the first "
                           + "on another day") String b,
                       @Option(names = "--as-of", paramLabel = "DATE", description = "the first as it was known on that day")
                       String asOf,
                       @Option(names = "--and-of", paramLabel = "DATE", description = "the second as it was known on that day; "
                           + "default today") String andOf,
                       @Option(names = "--known-now", description = "what was true on those days as it is known now")
                       boolean knownNow,
                       @Option(names = "--tolerance", paramLabel = "LIST", description = "tolerances, such as loft=0.2")
                       String tolerance,
                       @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (knownNow && asOf == null && andOf == null) {
            throw new BadInput("--known-now goes with --as-of DATE or --and-of DATE");
        }
        if (b == null && asOf == null && andOf == null) {
            throw new BadInput("one club and no day: give a second club, or a day with --as-of");
        }
        ClubViews.Compared compared = ClubViews.compare(book.there(), a, when("--as-of", asOf, knownNow), b == null ? a : b,
            when("--and-of", andOf, knownNow), new Tolerances(QuantityList.OF_CLUBS.tolerances("--tolerance", tolerance), Map.of()));
        if (output.isJson()) {
            out().println(ClubJson.compared(compared));
        } else {
            new ClubPage(output.page(out())).compared(compared);
        }
        return Main.DONE;
    }

    private static ClubViews.When when(String option, String day, boolean knownNow) throws BadInput {
        Optional<LocalDate> on = SittingOptions.day(option, day);
        return on.isEmpty() ? ClubViews.When.NOW : new ClubViews.When(on, knownNow);
    }
}
