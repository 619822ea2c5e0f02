package benchtwin.cli;

import java.io.Console;
import java.util.Optional;

/** Asks for what nobody beside may read. */
@FunctionalInterface
interface Secrets {

    /** What was typed, without showing it; empty where there is nobody to ask. */
    Optional<String> ask(String prompt);

    /** At the terminal. */
    static Secrets atTheTerminal() {
        Console console = System.console();
        return console == null ? prompt -> Optional.empty()
            : prompt -> Optional.ofNullable(console.readPassword("%s", prompt)).map(String::new);
    }
}
