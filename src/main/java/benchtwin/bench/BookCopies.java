package benchtwin.bench;

import benchtwin.book.Book;
import benchtwin.book.BookCheck;
import benchtwin.book.BookProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Copies of a book that lie in a folder beside it, each named for the second it was made in, and by a number after that where there were several. */
public final class BookCopies {

    private static final String FOLDER = "copies";
    private static final String END = ".book";
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final OpenBook book;

    /**
     * Those of a book.
     * @param book the book
     */
    public BookCopies(OpenBook book) {
        this.book = book;
    }

    /**
     * One of them.
     * @param name  the file's bare name
     * @param made  when it was made, in the workshop's zone: {@code 2026-05-20 18:04}
     * @param bytes how large it is
     */
    public record Copy(String name, String made, long bytes) {
    }

    /**
     * Where they lie.
     * @return a folder, which need not be there yet
     */
    public Path folder() {
        return book.file().toAbsolutePath().resolveSibling(FOLDER);
    }

    /**
     * Those there are.
     * @return newest first
     * @throws BadInput when the folder cannot be read
     */
    public List<Copy> all() throws BadInput {
        if (!Files.isDirectory(folder())) {
            return List.of();
        }
        Pattern ours = Pattern.compile(Pattern.quote(bare()) + "-(\\d{4}-\\d\\d-\\d\\d-\\d{6})(-\\d+)?" + Pattern.quote(END));
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(Files::isRegularFile).map(file -> ours.matcher(file.getFileName().toString())).filter(Matcher::matches)
                .map(name -> new Copy(name.group(), LocalDateTime.parse(name.group(1), SECOND).format(MINUTE), size(name.group())))
                .sorted(Comparator.comparing((Copy copy) -> copy.name().replace(END, "")).reversed()).toList();
        } catch (IOException unreadable) {
            throw new BadInput("%s cannot be read: %s".formatted(folder(), unreadable.getMessage()));
        }
    }

    private long size(String name) {
        try {
            return Files.size(folder().resolve(name));
        } catch (IOException gone) {
            return 0;
        }
    }

    private String bare() {
        String name = book.file().getFileName().toString();
        return name.endsWith(END) ? name.substring(0, name.length() - END.length()) : name;
    }

    /**
     * Makes one while the book may be in use; it is whole or not there at all.
     * @return the file
     * @throws BadInput when it cannot be written
     */
    public Path make() throws BadInput {
        String name = bare() + "-" + LocalDateTime.ofInstant(book.book().clock().instant(), book.zone()).format(SECOND);
        Path copy = folder().resolve(name + END);
        for (int again = 2; Files.exists(copy); again++) {
            copy = folder().resolve("%s-%d%s".formatted(name, again, END));
        }
        try {
            Files.createDirectories(folder());
        } catch (IOException refused) {
            throw new BadInput("no copy was made: the folder %s cannot be made (%s)".formatted(folder(), refused.getMessage()));
        }
        BookCare.backUp(book, copy);
        return copy;
    }

    /**
     * The file of one.
     * @param name its bare name
     * @return where it lies
     * @throws BadInput when there is none of that name
     */
    public Path file(String name) throws BadInput {
        if (all().stream().noneMatch(copy -> copy.name().equals(name))) {
            throw new BadInput("no copy of the book is called %s".formatted(name));
        }
        return folder().resolve(name);
    }

    /**
     * Checks everything in one. What is looked at is a copy of the copy: a book that is opened gets a log beside it.
     * @param name its bare name
     * @return what was found
     * @throws BadInput when there is none of that name, or it cannot even be read
     */
    public BookCare.Check check(String name) throws BadInput {
        Path copy = file(name);
        Path trial = null;
        try {
            trial = Files.createTempDirectory("benchtwin-copy");
            Path file = Files.copy(copy, trial.resolve(name));
            return BookCare.Check.of(BookCheck.all(Book.open(file, Clock.systemUTC())));
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage().replace(trial.resolve(name).toString(), copy.toString()));
        } catch (IOException refused) {
            throw new BadInput("%s cannot be checked: %s".formatted(copy, refused.getMessage()));
        } finally {
            delete(trial);
        }
    }

    private static void delete(Path folder) {
        if (folder == null) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException stays) {
            // the system clears what is left of its folder for the while
        }
    }
}
