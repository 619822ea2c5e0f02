package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many who open a book that is not there yet, all at once. */
class FirstOpeningTest {

    private static final int PROGRAMS = 6;
    private static final int THREADS = 2;
    private static final int ROUNDS = 3;

    @TempDir
    private Path folder;

    /** Opens a book of each round with several threads, enters a player with each, and says how it went. */
    static final class Opener {

        private Opener() {
        }

        public static void main(String[] args) throws Exception {
            ChildJava.waitForGo();
            ExecutorService threads = Executors.newFixedThreadPool(THREADS);
            for (int round = 0; round < ROUNDS; round++) {
                Path file = Path.of(args[0]).resolve("round-" + round).resolve("new.book");
                String name = args[1];
                for (Future<String> done : threads.invokeAll(IntStream.range(0, THREADS)
                        .<Callable<String>>mapToObj(thread -> () -> enter(file, name + "-" + thread)).toList())) {
                    System.out.println(done.get());
                }
            }
            threads.shutdown();
        }

        private static String enter(Path file, String name) {
            try {
                Book book = Book.open(file, Clock.systemUTC());
                return book.write(Books.JO, "enter", entry -> entry.add(ThingKind.PLAYER, name, NewEvent.of(EventKind.RECEIVED)))
                    .tag();
            } catch (BookProblem | RuntimeException refused) {
                return refused.toString();
            }
        }
    }

    @Test
    void everyOneOfThemOpensTheSameBookAndWritesToIt() throws IOException, InterruptedException, BookProblem, SQLException {
        List<ChildJava> programs = new ArrayList<>();
        for (int program = 0; program < PROGRAMS; program++) {
            programs.add(ChildJava.start(folder, Opener.class, folder, "P" + program));
        }
        for (ChildJava program : programs) {
            program.here();
        }
        programs.forEach(ChildJava::go);
        List<String> said = new ArrayList<>();
        for (ChildJava program : programs) {
            said.addAll(program.rest());
            assertThat(program.exit()).isZero();
        }
        List<String> names = IntStream.range(0, PROGRAMS).boxed()
            .flatMap(program -> IntStream.range(0, THREADS).mapToObj(thread -> "P%d-%d".formatted(program, thread))).toList();
        assertThat(said).hasSize(ROUNDS * names.size());
        assertThat(said.stream().distinct().toList()).containsExactlyInAnyOrderElementsOf(names);
        for (int round = 0; round < ROUNDS; round++) {
            Path file = folder.resolve("round-" + round).resolve("new.book");
            Book book = Book.open(file, Clock.systemUTC());
            List<String> players = book.read(view -> view.things(ThingKind.PLAYER)).stream().map(Thing::tag).toList();
            assertThat(players).containsExactlyInAnyOrderElementsOf(names);
            assertThat(BookCheck.all(book).findings()).isEmpty();
            assertThat(migrations(file)).as("the schema was made once").isEqualTo(BookMigration.NEWEST.version());
        }
    }

    private static int migrations(Path file) throws SQLException {
        try (Connection connection = new Connections(file).reading().getConnection();
             Statement statement = connection.createStatement();
             ResultSet row = statement.executeQuery("SELECT count(*) FROM flyway_schema_history WHERE success")) {
            return row.getInt(1);
        }
    }

    /** Shuts others out of making a book, and never lets go of its own accord. */
    static final class Holder {

        private Holder() {
        }

        public static void main(String[] args) throws Exception {
            new BookFile(Path.of(args[0]), Clock.systemUTC()).alone(() -> {
                ChildJava.orders().readLine();
            });
        }
    }

    @Test
    void oneMakesABookWhileTheOthersWaitAndAKilledOneLetsGo() throws Exception {
        Book.open(folder.resolve("so that all that has to be loaded is loaded.book"), Clock.systemUTC());
        Path file = folder.resolve("held.book");
        ExecutorService threads = Executors.newSingleThreadExecutor();
        try (ChildJava holder = ChildJava.start(folder, Holder.class, file).here()) {
            Future<Book> opened = threads.submit(() -> Book.open(file, Clock.systemUTC()));
            assertThatThrownBy(() -> opened.get(1500, TimeUnit.MILLISECONDS)).isInstanceOf(TimeoutException.class);
            assertThat(file).doesNotExist();
            holder.kill();
            assertThat(BookCheck.all(opened.get(20, TimeUnit.SECONDS)).findings()).isEmpty();
        } finally {
            threads.shutdownNow();
        }
    }

    /** A program that makes a book turns nothing into a book in one step; made and unmade over and over by the same step here. */
    @Test
    void aBookThatIsBeingMadeIsNeverTakenForAnotherProgramsFile() throws Exception {
        Path file = folder.resolve("on and off.book");
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService threads = Executors.newSingleThreadExecutor();
        Set<Integer> versions = new HashSet<>();
        try (Connection connection = new Connections(file).making().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
            statement.execute("PRAGMA synchronous = OFF");
            connection.setAutoCommit(false);
            AtomicInteger done = new AtomicInteger();
            Future<Void> made = threads.submit(() -> {
                for (int times = 0; !stop.get(); times = done.incrementAndGet()) {
                    statement.execute(times % 2 == 0 ? "CREATE TABLE entry (id INTEGER)" : "DROP TABLE entry");
                    statement.execute("PRAGMA application_id = " + (times % 2 == 0 ? 1_651_799_857 : 0));
                    statement.execute("PRAGMA user_version = " + (times % 2 == 0 ? 1 : 0));
                    connection.commit();
                }
                return null;
            });
            for (int looks = 0; looks < 400 || done.get() < 400; looks++) {
                versions.add(new BookLook(file, file, 1).found().version());
            }
            stop.set(true);
            made.get();
            assertThat(versions).containsExactlyInAnyOrder(0, 1);
        } finally {
            stop.set(true);
            threads.shutdownNow();
        }
    }
}
