package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.PlayerJson;
import benchtwin.bench.QuantityList;
import benchtwin.club.Hand;
import benchtwin.club.QuantityText;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code benchtwin player}. */
@Command(name = "player", mixinStandardHelpOptions = true, description = "The players in the book.",
    footer = {"", "Example:", "  benchtwin player add \"S. Moor\" --hand right --tolerance loft=0.2"})
final class PlayerCommand extends CommandGroup {

    private static final int LONGEST_NAME = 40;

    @Command(name = "add", mixinStandardHelpOptions = true, description = "Put a player into the book.",
        footer = {"", "Example:", "  benchtwin player add \"S. Moor\" --hand right --note \"likes a firm step\""})
    int add(@Parameters(paramLabel = "NAME", description = "the player's name") String name,
            @Option(names = "--hand", paramLabel = "HAND", description = "right or left") Hand hand,
            @Option(names = "--tolerance", paramLabel = "LIST", description = "tolerances this player wants, such as "
                + "loft=0.2,length=1/16; used for the player's clubs where a command names none") String tolerance,
            @Option(names = "--note", paramLabel = "TEXT", description = "anything else") String note,
            @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        String added = PlayerBook.add(book.open(), name, Optional.ofNullable(hand),
            QuantityList.OF_CLUBS.tolerances("--tolerance", tolerance), Optional.ofNullable(note));
        return Said.print(output, out(), "player add", List.of(added), "%s is in the book.".formatted(added), List.of());
    }

    @Command(name = "describe", mixinStandardHelpOptions = true, description = "Put down anew what is known of a player.",
        footer = {"", "Example:", "  benchtwin player describe \"N. Oakes\" --tolerance loft=0.15"})
    int describe(@Parameters(paramLabel = "NAME", description = "the player's name") String name,
                 @Option(names = "--hand", paramLabel = "HAND", description = "right or left") Hand hand,
                 @Option(names = "--tolerance", paramLabel = "LIST", description = "tolerances that change") String tolerance,
                 @Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        String described = PlayerBook.describe(book.there(), name, Optional.ofNullable(hand),
            QuantityList.OF_CLUBS.tolerances("--tolerance", tolerance));
        return Said.print(output, out(), "player describe", List.of(described),
            "%s is described anew; what was known before is kept.".formatted(described), List.of());
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List the players.",
        footer = {"", "Example:", "  benchtwin player list"})
    int list(@Mixin BookOptions book, @Mixin OutputOptions output) throws BadInput {
        output.check();
        List<PlayerBook.Player> players = PlayerBook.list(book.there());
        if (output.isJson()) {
            out().println(PlayerJson.list(players));
        } else {
            Page page = output.page(out());
            if (players.isEmpty()) {
                page.line("No players yet. Put one in with: benchtwin player add NAME");
            }
            int width = players.stream().mapToInt(player -> player.name().length()).max().orElse(1);
            int name = Math.min(width, LONGEST_NAME);
            players.forEach(player -> page.line("%-" + name + "s  %-5s  %2d club%s  %s", page.cut(player.name(), name),
                player.hand().map(Hand::word).orElse(""), player.clubs().size(), player.clubs().size() == 1 ? " " : "s",
                page.cut(String.join("; ", player.jobs().stream().map(PlayerBook.JobInShort::line).toList()), Page.WIDTH - name - LONGEST_NAME / 2)));
        }
        return Main.DONE;
    }

    @Command(name = "show", mixinStandardHelpOptions = true, description = "Show a player: clubs, jobs, tolerances, notes.",
        footer = {"", "Example:", "  benchtwin player show \"N. Oakes\""})
    int show(@Parameters(paramLabel = "NAME", description = "the player's name") String name, @Mixin BookOptions book,
             @Mixin OutputOptions output) throws BadInput {
        output.check();
        PlayerBook.Player player = PlayerBook.show(book.there(), name);
        if (output.isJson()) {
            out().println(PlayerJson.text(player));
        } else {
            print(output.page(out()), player);
        }
        return Main.DONE;
    }

    private static void print(Page page, PlayerBook.Player player) {
        page.wrapped("", "%s%s".formatted(player.name(), player.hand().map(hand -> ", " + hand.word() + "-handed").orElse("")));
        if (!player.tolerances().isEmpty()) {
            page.wrapped("Tolerances  ", String.join(", ", player.tolerances().entrySet().stream()
                .map(one -> Figures.name(one.getKey()) + " ±" + QuantityText.size(one.getKey(), one.getValue()))
                .toList()));
        }
        if (!player.clubs().isEmpty() || !player.jobs().isEmpty() || !player.notes().isEmpty()) {
            page.blank();
        }
        player.clubs().forEach(club -> page.line("%-24s  %-12s  %-8s  %s", page.cut(club.tag(), 24), page.cut(club.what(), 12),
            club.state(), page.cut(club.parts(), 46)));
        player.jobs().forEach(job -> page.wrapped("", job.line()));
        player.notes().forEach(note -> page.wrapped("Note: ", note));
    }
}
