package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.GaugeCheck;
import benchtwin.bench.GaugeJson;
import benchtwin.bench.OpenBook;
import benchtwin.bench.QuantityList;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code benchtwin gauge}. */
@Command(name = "gauge", mixinStandardHelpOptions = true,
    description = "The workshop's gauges: how far each is trusted, and what they read apart.",
    footer = {"", "Example:", "  benchtwin gauge check \"bench 1\""})
final class GaugeCommand extends CommandGroup {

    @Command(name = "add", mixinStandardHelpOptions = true,
        description = "Put a gauge into the book, or put down anew what is known of it.",
        footer = {"", "Examples:", "  benchtwin gauge add \"bench 1\" --kind loft-and-lie --uncertainty loft=0.2,lie=0.2 --mark loft=0.5",
            "  benchtwin gauge add \"bench 1\" --checked 2026-05-01 --every 30"})
    int add(@Parameters(paramLabel = "NAME", description = "what the workshop calls it") String name,
            @Option(names = "--kind", paramLabel = "KIND", description = "loft-and-lie, face, scale, swing-scale, frequency, "
                + "coordinate or ruler") String kind,
            @Option(names = "--uncertainty", paramLabel = "LIST", description = "standard uncertainty of a reading, by quantity")
            String uncertainty,
            @Option(names = "--mark", paramLabel = "LIST", description = "how far its marks are apart, or the step of its last "
                + "digit, by quantity") String mark,
            @Option(names = "--checked", paramLabel = "DATE", description = "when it was last checked") String checked,
            @Option(names = "--every", paramLabel = "DAYS", description = "how often it wants checking") Integer every,
            @Mixin BookOptions book) throws BadInput {
        String added = GaugeBook.describe(book.open(), new GaugeBook.Described(name,
            kind == null ? Optional.empty() : Optional.of(kind(kind)), columns("--uncertainty", uncertainty),
            columns("--mark", mark), SittingOptions.day("--checked", checked), GaugeBook.interval("--every", Optional.ofNullable(every))));
        out().printf("Gauge %s is in the book.%n", added);
        return Main.DONE;
    }

    private static GaugeBook.Kind kind(String word) throws BadInput {
        String asked = word.toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        for (GaugeBook.Kind kind : GaugeBook.Kind.values()) {
            if (kind.name().equals(asked)) {
                return kind;
            }
        }
        throw new BadInput("--kind \"%s\": expected loft-and-lie, face, scale, swing-scale, frequency, coordinate or ruler"
            .formatted(word));
    }

    /** Quantities as typed, by the name the book keeps them under; a mass is read of parts as well as of clubs. */
    private static Map<String, Double> columns(String option, String list) throws BadInput {
        Map<String, Double> columns = new TreeMap<>();
        for (Map.Entry<Quantity, Double> one : QuantityList.OF_CLUBS.tolerances(option, list).entrySet()) {
            GaugeBook.columns(one.getKey()).forEach(column -> columns.put(column, one.getValue()));
        }
        return columns;
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List the gauges with what is used of them.",
        footer = {"", "Example:", "  benchtwin gauge list"})
    int list(@Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<GaugeBook.Standing> gauges = GaugeBook.list(book.open());
        if (output.isJson()) {
            out().println(GaugeJson.list(gauges));
        } else {
            new GaugePage(output.page(out())).list(gauges);
        }
        return Main.DONE;
    }

    @Command(name = "check", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Work out from the readings in the book how well a gauge repeats and what it reads apart from others. Nothing "
            + "is used before it is accepted.",
        footer = {"", "Examples:", "  benchtwin gauge check \"bench 1\"",
            "  benchtwin gauge check \"bench 2\" --accept --against \"bench 1\"",
            "", "Exit status: 0 something was found, 1 there are too few readings, 2 bad input."})
    int check(@Parameters(paramLabel = "NAME", description = "the gauge") String name,
              @Option(names = "--accept", description = "use what was found from now on") boolean accept,
              @Option(names = "--against", paramLabel = "NAME", description = "with --accept: the gauge its offsets are taken against")
              String against,
              @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        if (against != null && !accept) {
            throw new BadInput("--against goes with --accept");
        }
        OpenBook open = book.open();
        GaugeCheck.Checked checked = GaugeCheck.of(open, name);
        Optional<Integer> accepted = accept ? Optional.of(GaugeCheck.accept(open, checked, Optional.ofNullable(against)))
            : Optional.empty();
        if (output.isJson()) {
            out().println(GaugeJson.checked(checked, accepted));
        } else {
            new GaugePage(output.page(out())).checked(checked, accepted);
        }
        return checked.isEmpty() ? Main.NOTHING_SUITABLE : Main.DONE;
    }
}
