package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.Pictures;
import benchtwin.bench.SetJson;
import benchtwin.bench.SetPictures;
import benchtwin.bench.SetService;
import benchtwin.bench.WantedSets;
import benchtwin.match.Plan;
import benchtwin.picture.SetSheet;
import benchtwin.sets.PlayerSet;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Writes a plan of sets into a folder: a page for each player with every step and a picture, the whole as JSON, and what was
 * wished for as files that can be edited and planned again.
 */
final class SetFiles {

    private static final int LONGEST_NAME = 60;
    /** Names that mean a device on some systems, whatever ending they get. */
    private static final String DEVICE = "con|prn|aux|nul|com[0-9]|lpt[0-9]";

    private final Path folder;
    private final boolean plain;

    SetFiles(Path folder, boolean plain) {
        this.folder = folder;
        this.plain = plain;
    }

    /** Says whether a folder can be written into, before anything is worked out. */
    static void check(Path folder) throws BadInput {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new BadInput("--out %s is not a folder".formatted(folder));
        }
        Path parent = folder.toAbsolutePath().normalize().getParent();
        if (!Files.exists(folder) && (parent == null || !Files.isDirectory(parent))) {
            throw new BadInput("--out %s cannot be made: there is no folder %s".formatted(folder, parent));
        }
        Path writable = Files.exists(folder) ? folder : parent;
        if (!Files.isWritable(writable)) {
            throw new BadInput("--out %s: nothing may be written into %s".formatted(folder, writable));
        }
    }

    /** Writes, over files of the same names, and returns them. */
    List<Path> write(SetService.Answer answer, WantedSets sets) throws BadInput {
        List<Path> written = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            Set<String> taken = new HashSet<>();
            for (PlayerSet set : answer.plan().players()) {
                String name = fileName(set.player(), taken);
                written.add(Files.writeString(folder.resolve(name + ".txt"), text(answer, set)));
                Optional<SetSheet> sheet = SetPictures.of(set);
                if (sheet.isPresent()) {
                    written.add(folder.resolve(name + ".svg"));
                    Pictures.write(sheet.get(), folder.resolve(name + ".svg"));
                }
            }
            written.add(Files.writeString(folder.resolve("plan.json"), SetJson.text(answer, sets) + "\n"));
            written.add(Files.writeString(folder.resolve("set-targets.csv"), answer.targetsText()));
            written.add(Files.writeString(folder.resolve("lines.csv"), answer.linesText()));
        } catch (IOException unwritable) {
            throw new BadInput("--out %s cannot be written: %s".formatted(folder, unwritable.getMessage()));
        }
        return written;
    }

    private String text(SetService.Answer answer, PlayerSet set) {
        StringWriter text = new StringWriter();
        try (PrintWriter writer = new PrintWriter(text)) {
            Page page = new Page(writer, plain);
            new SetTable(page, set, answer.request().pins(), true).print();
            List<Plan> plans = set.clubs().stream().flatMap(club -> club.build().stream()).map(build -> build.plan()).toList();
            RulesLines.whoDecides(page, set.clubs().stream().flatMap(club -> club.build().stream()));
            Cautions.of(plans).forEach(caution -> page.wrapped("Caution: ", caution));
            page.line("benchtwin %s", BuildIdentity.text());
        }
        return text.toString();
    }

    /**
     * A name any file system takes, different for every player: small letters, digits and hyphens.
     * @param player any name
     * @param taken  names given out so far; this one is added
     */
    static String fileName(String player, Set<String> taken) {
        String plain = Normalizer.normalize(player, Normalizer.Form.NFD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String name = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        if (name.isEmpty() || name.matches(DEVICE)) {
            name = name.isEmpty() ? "player" : "player-" + name;
        }
        String own = name;
        for (int k = 2; !taken.add(own); k++) {
            own = name + "-" + k;
        }
        return own;
    }
}
