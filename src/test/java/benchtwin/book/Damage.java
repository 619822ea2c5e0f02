package benchtwin.book;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;

/** What disks and people do to a file. */
final class Damage {

    private static final int PAGE = 4096;

    private Damage() {
    }

    /** Raw statements, with nothing that holds references together. */
    static void sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA foreign_keys = OFF");
            for (String one : statements) {
                statement.execute(one);
            }
        }
    }

    /** Overwrites the head of the first page of a table or index. */
    static void inside(Path file, String name) throws IOException, SQLException {
        int page;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
            try (ResultSet row = statement.executeQuery("SELECT rootpage FROM sqlite_schema WHERE name = '%s'".formatted(name))) {
                page = row.getInt(1);
            }
        }
        bytes(file, (page - 1) * (long) PAGE, 64);
    }

    /** Overwrites bytes. */
    static void bytes(Path file, long from, int count) throws IOException {
        byte[] noise = new byte[count];
        Arrays.fill(noise, (byte) 0xA5);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(noise), from);
        }
    }

    static void truncate(Path file, long bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(bytes);
        }
    }
}
