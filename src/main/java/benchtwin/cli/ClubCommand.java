package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubBook;
import benchtwin.bench.Corrections;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Sitting;
import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code benchtwin club}. */
@Command(name = "club", mixinStandardHelpOptions = true,
    description = "Players' clubs: what they are made of, what they measure, what was done to them.",
    footer = {"", "Example:", "  benchtwin club record OAKES-DR loft=9.4 lie=58.3 face=-0.5 --gauge \"bench 1\""})
final class ClubCommand extends ClubViewCommands {

    @Command(name = "add", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Put a club into the book, with what it is made of and what it measures.",
        footer = {"", "Example:", "  benchtwin club add MOOR-3W --player \"S. Moor\" --category fairway --number 3 --hand right \\",
            "      --head H-018 --shaft S-034 --grip G-009 loft=15.2 lie=57.5 length=43 swing-weight=D3"})
    int add(@Parameters(index = "0", paramLabel = "TAG", description = "the club's own tag") String tag,
            @Parameters(index = "1..*", arity = "0..*", paramLabel = "QUANTITY=VALUE", description = "what it measures")
            List<String> values,
            @Option(names = "--player", required = true, paramLabel = "NAME", description = "whose it is") String player,
            @Option(names = "--category", required = true, paramLabel = "CATEGORY",
                description = "driver, fairway, hybrid, iron, wedge or putter") Category category,
            @Option(names = "--number", paramLabel = "N", description = "its number in the set") String number,
            @Option(names = "--hand", required = true, paramLabel = "HAND", description = "right or left") Hand hand,
            @Option(names = "--role", paramLabel = "ROLE", defaultValue = "gamer",
                description = "gamer, backup, test or retired; default ${DEFAULT-VALUE}") String role,
            @Mixin ClubFactOptions facts, @Mixin SittingOptions how, @Mixin BookOptions book, @Mixin OutputOptions output)
        throws BadInput {
        output.check();
        Sitting sitting = how.sitting(orNone(values), facts.setting());
        List<String> odd = how.odd(category, tag, sitting);
        ClubBook.Entered entered = ClubBook.add(book.open(), new ClubBook.NewClub(tag, player, category,
            Optional.ofNullable(number), hand, role(role), facts.facts()), sitting);
        return said("club add", entered, odd, "is in the book", output);
    }

    @Command(name = "record", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Enter what was read of a club, and what of it has changed. What was known before is kept.",
        footer = {"", "Examples:", "  benchtwin club record OAKES-DR loft=9.4 loft=9.5 lie=58.3 --gauge \"bench 1\"",
            "  benchtwin club record OAKES-DR --grip G-064 --tape-layers 2 swing-weight=D2.0",
            "  benchtwin club record OAKES-DR --state damaged --note \"face cracked on the range\""})
    int record(@Parameters(index = "0", paramLabel = "TAG", description = "the club's tag") String tag,
               @Parameters(index = "1..*", arity = "0..*", paramLabel = "QUANTITY=VALUE", description = "what was read; a "
                   + "quantity given more than once was read more than once") List<String> values,
               @Option(names = "--state", paramLabel = "STATE", description = "in play, backup, test, damaged, stripped or retired, "
                   + "where it has changed") String state,
               @Option(names = "--found", description = "this is only how it came to the bench, not how it should be") boolean found,
               @Mixin ClubFactOptions facts, @Mixin SittingOptions how, @Mixin BookOptions book, @Mixin OutputOptions output)
        throws BadInput {
        output.check();
        Map<String, String> changed = facts.facts();
        Sitting sitting = how.sitting(orNone(values), facts.setting());
        OpenBook open = book.there();
        List<String> odd = how.odd(open, tag, sitting);
        ClubBook.Entered entered = ClubBook.record(open, tag, sitting, changed, state == null ? Optional.empty()
            : Optional.of(role(state)), found);
        return said("club record", entered, odd, found ? "was found so; what it should measure is as before" : "is recorded", output);
    }

    @Command(name = "correct", mixinStandardHelpOptions = true,
        description = "Put a reading right, or take it back. The old one is kept, with the reason.",
        footer = {"", "Examples:", "  benchtwin club correct OAKES-DR 118 9.4 --why \"digits swapped\"",
            "  benchtwin club correct OAKES-DR 118 --why \"another club was on the gauge\""})
    int correct(@Parameters(index = "0", paramLabel = "TAG", description = "the club's tag") String tag,
                @Parameters(index = "1", paramLabel = "READING", description = "the reading's number, as club show has it")
                long reading,
                @Parameters(index = "2", arity = "0..1", paramLabel = "VALUE", description = "what it should have said: 9.4, 45 1/4, "
                    + "D2.3; without it the reading is taken back") String value,
                @Option(names = "--why", required = true, paramLabel = "TEXT", description = "why") String why,
                @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        return corrected(Corrections.ofClub(book.there(), tag, reading, Optional.ofNullable(value), why), reading, "club correct", tag,
            output, out());
    }

    static int corrected(Corrections.Corrected corrected, long reading, String act, String tag, OutputOptions output,
                         PrintWriter out) {
        return Said.print(output, out, act, List.of(tag), corrected.now().isPresent()
            ? "Reading %d of %s, %s %s, is put right: %s. The old one is kept.".formatted(reading, corrected.of(), corrected.what(),
                corrected.was(), corrected.now().get())
            : "Reading %d of %s, %s %s, is taken back. It is kept, with the reason.".formatted(reading, corrected.of(),
                corrected.what(), corrected.was()), List.of());
    }

    private int said(String act, ClubBook.Entered entered, List<String> odd, String what, OutputOptions output) {
        List<String> remarks = new ArrayList<>(entered.remarks());
        remarks.addAll(odd);
        return Said.print(output, out(), act, List.of(entered.club()), "%s %s%s.".formatted(entered.club(), what, entered.read() == 0
            ? "" : ", with %d reading%s".formatted(entered.read(), entered.read() == 1 ? "" : "s")), remarks);
    }

    private static List<String> orNone(List<String> values) {
        return values == null ? List.of() : values;
    }

    /** A club's state; gamer is another word for in play. */
    static ClubState role(String word) throws BadInput {
        String asked = word.strip().toLowerCase(java.util.Locale.ROOT).replace('-', ' ').replace('_', ' ');
        for (ClubState state : ClubState.values()) {
            if (state.word().equals(asked) || state == ClubState.IN_PLAY && asked.equals("gamer")) {
                return state;
            }
        }
        throw new BadInput("\"%s\" is no state of a club; expected gamer (in play), backup, test, damaged, stripped or retired"
            .formatted(word));
    }
}
