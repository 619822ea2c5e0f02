package benchtwin.book;

import java.util.Optional;

/**
 * One confirmed act of somebody at the book.
 * @param id      its number in the file
 * @param at      when it was entered, an instant
 * @param by      who entered it, if they said so
 * @param what    the act, in words
 * @param program the build of the program that wrote it
 */
public record Entry(long id, Moment at, Optional<String> by, String what, String program) {
}
