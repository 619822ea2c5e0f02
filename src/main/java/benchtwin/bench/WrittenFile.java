package benchtwin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A file somebody asked for by name, over one that is there already. */
final class WrittenFile {

    private WrittenFile() {
    }

    /**
     * Says whether it can be written, before anything is worked out.
     * @param file    its name
     * @param endings one of which it must have
     * @param what    what it holds: {@code picture}
     * @throws BadInput when its name ends otherwise, or its folder is not there
     */
    static void check(Path file, List<String> endings, String what) throws BadInput {
        String name = file.getFileName() == null ? "" : file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (endings.stream().noneMatch(name::endsWith)) {
            throw new BadInput("\"%s\" does not say which %s it is to be; expected a name ending in %s".formatted(file, what,
                String.join(" or ", endings)));
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new BadInput("%s cannot be written: there is no folder %s".formatted(file, folder));
        }
        if (Files.isDirectory(file)) {
            throw new BadInput("%s is a folder; expected the name of a %s".formatted(file, what));
        }
    }

    /** Writes it. */
    static void write(Path file, byte[] bytes) throws BadInput {
        try {
            Files.write(file, bytes);
        } catch (IOException unwritable) {
            throw new BadInput("%s cannot be written: %s".formatted(file, unwritable.getMessage()));
        }
    }
}
