package benchtwin.book;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import javax.sql.DataSource;

/** Copies a book while it is in use. The copy is whole or not there at all. */
final class BookBackup {

    private BookBackup() {
    }

    /**
     * Writes a copy as of one moment.
     * @param book   what is copied, for messages
     * @param source connections to it
     * @param copy   where the copy goes
     */
    static void write(Path book, DataSource source, Path copy) throws BookProblem {
        if (Files.exists(copy)) {
            throw new BookProblem("%s is there already; name a file that is not".formatted(copy));
        }
        Path folder = copy.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new BookProblem("no backup was written to %s: there is no folder %s".formatted(copy, folder));
        }
        Path parts = copy.resolveSibling(copy.getFileName() + ".part");
        try (Connection connection = source.getConnection();
             PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            Files.deleteIfExists(parts);
            Files.createFile(parts);
            statement.setString(1, parts.toAbsolutePath().toString());
            statement.execute();
            force(parts, StandardOpenOption.WRITE);
            move(parts, copy);
            forceFolder(folder);
        } catch (SQLException | IOException refused) {
            delete(parts);
            delete(parts.resolveSibling(parts.getFileName() + "-journal"));
            throw new BookProblem("no backup was written to %s: %s".formatted(copy, why(book, folder, refused)), refused);
        }
    }

    private static String why(Path book, Path folder, Exception refused) {
        if (refused instanceof IOException) {
            return "%s may not be written to (%s)".formatted(folder, refused.getMessage());
        }
        if (BookTrouble.code(refused) == BookTrouble.FULL) {
            return "the disk is full";
        }
        BookProblem problem = BookTrouble.of(book, refused);
        return problem == null ? BookTrouble.said(refused) : problem.getMessage();
    }

    private static void force(Path file, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how)) {
            channel.force(true);
        }
    }

    /** So that the name outlives a loss of power as the content does; not every system lets a folder be opened for it. */
    private static void forceFolder(Path folder) {
        try {
            force(folder, StandardOpenOption.READ);
        } catch (IOException notHere) {
            return;
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException elsewhere) {
            Files.move(from, to);
        }
    }

    static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // what is left does no harm: it bears the name of no book and no backup
        }
    }
}
