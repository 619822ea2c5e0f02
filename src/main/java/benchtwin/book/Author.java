package benchtwin.book;

import java.util.Optional;

/**
 * Who enters something, and with what.
 * @param by      who, if they said so
 * @param program the build of the program
 */
public record Author(Optional<String> by, String program) {
}
