package benchtwin.book;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where the book lies when nobody says otherwise: the user's data folder, by the platform's convention. */
public final class BookPlace {

    /** The environment variable that names another file. */
    public static final String VARIABLE = "BENCHTWIN_BOOK";
    private static final String FOLDER = "benchtwin";
    private static final String FILE = "workshop.book";

    private BookPlace() {
    }

    /**
     * The book to open.
     * @param named       the file that was named, if one was
     * @param environment the environment's variables
     * @param system      the system's name, as Java gives it
     * @param home        the user's home folder
     * @return the named file, else the one the environment names, else the usual one
     */
    public static Path of(Optional<Path> named, Map<String, String> environment, String system, Path home) {
        return named.or(() -> variable(environment, VARIABLE)).orElseGet(() -> folder(environment, system, home).resolve(FILE));
    }

    /** Published: XDG Base Directory Specification 0.8; Apple's and Microsoft's guides to where applications keep data. */
    private static Path folder(Map<String, String> environment, String system, Path home) {
        if (system.startsWith("Windows")) {
            return variable(environment, "LOCALAPPDATA").orElse(home.resolve("AppData").resolve("Local")).resolve(FOLDER);
        }
        if (system.startsWith("Mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(FOLDER);
        }
        return variable(environment, "XDG_DATA_HOME").filter(Path::isAbsolute)
            .orElse(home.resolve(".local").resolve("share")).resolve(FOLDER);
    }

    private static Optional<Path> variable(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name)).filter(text -> !text.isBlank()).map(Path::of);
    }
}
