package benchtwin.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether somebody is watching. */
final class Terminal {

    private static final Path COMPLAINTS = Path.of("/proc/self/fd/2");

    private Terminal() {
    }

    /**
     * Whether the program's complaints go to a terminal, where a line can be rewritten. Where the system does not tell that
     * apart, both its input and its answers have to.
     */
    static boolean isWatched() {
        if (Files.isSymbolicLink(COMPLAINTS)) {
            try {
                String device = Files.readSymbolicLink(COMPLAINTS).toString();
                return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
            } catch (IOException unknown) {
                return false;
            }
        }
        return System.console() != null;
    }
}
