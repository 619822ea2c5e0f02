package benchtwin.book;

import java.nio.file.Path;
import java.util.OptionalInt;
import org.flywaydb.core.Flyway;

/**
 * Brings a book up to a version. Apart from {@link BookFile}, so that the library is not even loaded for a book that needs
 * nothing.
 * @param version   of the last migration
 * @param locations where the migrations lie, as the library writes it
 */
record BookMigration(int version, String... locations) {

    /** This program's. */
    static final BookMigration NEWEST = new BookMigration(1, "classpath:benchtwin/book");

    /** All of it, or nothing: each migration is one transaction with its line in the list of those done. */
    void run(Path file, OptionalInt mostPages) {
        Flyway.configure(BookMigration.class.getClassLoader()).dataSource(new Connections(file, mostPages).writing())
            .locations(locations).validateMigrationNaming(true).load().migrate();
    }
}
