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

/** Copies a book while it is in use. The copy is whole or not there at all. */
final class BookBackup {

    private BookBackup() {
    }

    /** Writes a copy as of one moment. */
    static void write(Path book, Path copy) throws BookProblem {
        if (Files.exists(copy)) {
            throw new BookProblem("%s is there already; name a file that is not".formatted(copy));
        }
        Path parts = copy.resolveSibling(copy.getFileName() + ".part");
        try (Connection connection = new Connections(book).reading().getConnection();
             PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            Files.deleteIfExists(parts);
            statement.setString(1, parts.toAbsolutePath().toString());
            statement.execute();
            force(parts);
            move(parts, copy);
        } catch (SQLException | IOException refused) {
            delete(parts);
            BookProblem problem = BookTrouble.of(book, refused);
            throw new BookProblem("no backup was written to %s: %s".formatted(copy,
                problem == null ? refused.getMessage() : problem.getMessage()), refused);
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException elsewhere) {
            Files.move(from, to);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // a part of a backup that cannot be deleted does no harm: it does not bear the backup's name
        }
    }
}
