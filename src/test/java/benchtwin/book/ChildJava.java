package benchtwin.book;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Another program: a Java of its own with the tests' class path, which says that it is there and begins when told. It ends
 * with its parent at the latest.
 */
final class ChildJava implements AutoCloseable {

    private static final String HERE = "here";

    private final Process process;
    private final BufferedReader out;
    private final PrintStream in;

    private ChildJava(Process process) {
        this.process = process;
        this.out = process.inputReader(StandardCharsets.UTF_8);
        this.in = new PrintStream(process.getOutputStream(), true, StandardCharsets.UTF_8);
    }

    /**
     * @param folder for what the program and the database's driver leave behind when they are killed
     * @param main   begins with {@link #waitForGo}
     * @param args   its arguments
     */
    static ChildJava start(Path folder, Class<?> main, Object... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Dorg.sqlite.tmpdir=" + folder, "-Djava.io.tmpdir=" + folder,
            "-cp", System.getProperty("java.class.path"), main.getName()));
        Arrays.stream(args).map(Object::toString).forEach(command::add);
        return new ChildJava(new ProcessBuilder(command)
            .redirectError(ProcessBuilder.Redirect.appendTo(folder.resolve("errors.txt").toFile())).start());
    }

    /** Waits until the program is there. */
    ChildJava here() throws IOException {
        String line = out.readLine();
        if (!HERE.equals(line)) {
            throw new IOException("the other program said " + line);
        }
        return this;
    }

    /** Lets it begin. */
    ChildJava go() {
        return go("go");
    }

    /** Lets it begin, and tells it with what. */
    ChildJava go(String with) {
        in.println(with);
        return this;
    }

    /** The next line it prints; null when there is none any more. */
    String line() throws IOException {
        return out.readLine();
    }

    /** Every line to the last. */
    List<String> rest() throws IOException {
        return out.lines().toList();
    }

    /** SIGKILL: the program has no chance to do anything more. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();    // the process's own method would throw away what was printed and not read
        process.waitFor();
    }

    int exit() throws InterruptedException {
        return process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    /** In the other program: says that it is there, and gives what it is told, which ends with its parent. */
    static BufferedReader orders() {
        System.out.println(HERE);
        System.out.flush();
        return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    }

    /** In the other program: says that it is there, waits, and sees to it that it does not outlive its parent. */
    static String waitForGo() throws IOException {
        BufferedReader told = orders();
        String with = told.readLine();
        Thread parent = new Thread(() -> {
            try {
                while (told.readLine() != null) {
                    continue;
                }
            } catch (IOException gone) {
                // as good as an end
            }
            Runtime.getRuntime().halt(3);
        });
        parent.setDaemon(true);
        parent.start();
        return with;
    }
}
