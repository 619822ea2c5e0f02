package benchtwin.book;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/**
 * Statements of one transaction, each prepared once and used as often as it is needed: for what is read and entered thousands
 * of times. One statement is not used while rows of it are still being read.
 */
final class Statements implements AutoCloseable {

    /** Something made of a row. */
    @FunctionalInterface
    interface FromRow<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** Something done with a row. */
    @FunctionalInterface
    interface WithRow {
        void done(ResultSet row) throws SQLException;
    }

    /** A failure of the database on its way to where it is explained. */
    static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1;

        Failed(SQLException cause) {
            super(cause);
        }
    }

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();
    private final Set<String> underWay = new HashSet<>();

    Statements(Handle handle) {
        connection = handle.getConnection();
    }

    /** Runs a statement that gives no rows. */
    void run(String sql, Object... values) {
        try {
            bound(sql, values).executeUpdate();
        } catch (SQLException failed) {
            throw new Failed(failed);
        }
    }

    /** Runs a statement that gives one number, such as an insertion that returns the row's. */
    long number(String sql, Object... values) {
        try (ResultSet row = bound(sql, values).executeQuery()) {
            if (!row.next()) {
                throw new IllegalStateException("no row from " + sql);
            }
            long number = row.getLong(1);
            while (row.next()) {
                // an insertion is done once its last row was asked for
            }
            return number;
        } catch (SQLException failed) {
            throw new Failed(failed);
        }
    }

    /** Every row. */
    <T> List<T> list(String sql, FromRow<T> from, Object... values) {
        List<T> all = new ArrayList<>();
        each(sql, row -> all.add(from.of(row)), values);
        return all;
    }

    /** The first row. */
    <T> Optional<T> first(String sql, FromRow<T> from, Object... values) {
        List<T> all = list(sql, from, values);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /**
     * Every row in turn.
     * @throws IllegalStateException when rows of the same statement are being read already
     */
    void each(String sql, WithRow with, Object... values) {
        if (!underWay.add(sql)) {
            throw new IllegalStateException("rows are still being read of " + sql);
        }
        try (ResultSet rows = bound(sql, values).executeQuery()) {
            while (rows.next()) {
                with.done(rows);
            }
        } catch (SQLException failed) {
            throw new Failed(failed);
        } finally {
            underWay.remove(sql);
        }
    }

    private PreparedStatement bound(String sql, Object... values) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    @Override
    public void close() {
        for (PreparedStatement statement : prepared.values()) {
            try {
                statement.close();
            } catch (SQLException gone) {
                // its connection is closed right after it
            }
        }
        prepared.clear();
    }
}
