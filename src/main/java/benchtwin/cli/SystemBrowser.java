package benchtwin.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens a page in the browser the system prefers. */
final class SystemBrowser {

    private SystemBrowser() {
    }

    /** Opens it. @return whether the system took it */
    static boolean open(String address) {
        return open(command(System.getProperty("os.name"), address));
    }

    static boolean open(List<String> command) {
        try {
            new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }

    /** What each kind of system has for it. */
    static List<String> command(String system, String address) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of(name.startsWith("mac") ? "open" : "xdg-open", address);
    }
}
