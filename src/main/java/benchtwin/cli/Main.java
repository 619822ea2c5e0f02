package benchtwin.cli;

import benchtwin.bench.BadInput;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line. Exit status: 0 done, 1 nothing suitable found, 2 bad input. */
@Command(name = "benchtwin", mixinStandardHelpOptions = true, versionProvider = Version.class,
    description = "Finds the head, shaft and bend plan nearest a golf club that is to be made again.",
    synopsisSubcommandLabel = "COMMAND", footer = {"", "Example:",
        "  benchtwin match --stock inventory-samples --club TAG"})
public final class Main implements Runnable {

    /** Done. */
    static final int DONE = 0;
    /** Nothing suitable found. */
    static final int NOTHING_SUITABLE = 1;
    /** Bad input. */
    static final int BAD_INPUT = 2;

    /** In the order the help lists them. */
    private static final List<Class<?>> COMMANDS = List.of(MatchCommand.class, PredictCommand.class, ShaftsCommand.class,
        ChangeCommand.class, SetCommand.class, BendCommand.class, RulesCommand.class, BagCommand.class, StockCommand.class,
        PlayerCommand.class, ClubCommand.class, JobCommand.class, TicketCommand.class, LabelCommand.class, GaugeCommand.class,
        NoteCommand.class, BookCommand.class, ServeCommand.class, DemoCommand.class, HelpCommand.class);
    private static final Pattern CHOICE = Pattern.compile("(expected one of )\\[([A-Z_, ]+)\\] \\(case-insensitive\\)");

    @Spec
    private CommandSpec spec;

    /**
     * Runs a command and ends the program with its status.
     * @param args the command line
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int status = run(out, err, args);
        out.flush();
        System.exit(status);
    }

    /**
     * Runs a command.
     * @param out  where answers go
     * @param err  where complaints go
     * @param args the command line
     * @return the exit status
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        return run(new PrintWriter(out, true, StandardCharsets.UTF_8), new PrintWriter(err, true, StandardCharsets.UTF_8), args);
    }

    /** The same, for a command that ends in another. */
    static int run(PrintWriter answers, PrintWriter complaints, String... args) {
        CommandLine line = line(args);
        line.setOut(answers);
        line.setErr(complaints);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(Page.WIDTH);
        line.setParameterExceptionHandler(Main::badOption);
        line.setExecutionExceptionHandler(Main::failed);
        int status = line.execute(args);
        answers.flush();
        complaints.flush();
        return status;
    }

    /** The program with the command that was typed; with all of them where none is. */
    static CommandLine line(String... args) {
        CommandLine line = new CommandLine(new Main());
        commands(args).forEach(line::addSubcommand);
        return line;
    }

    /** The command that was typed; all of them where none is, as learning a command's options takes its time. */
    private static List<Class<?>> commands(String... args) {
        List<Class<?>> typed = COMMANDS.stream().filter(command -> args.length > 0 && command != HelpCommand.class
            && command.getAnnotation(Command.class).name().equals(args[0])).toList();
        return typed.isEmpty() ? COMMANDS : typed;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int badOption(ParameterException problem, String[] args) {
        CommandLine line = problem.getCommandLine();
        line.getErr().println("benchtwin: " + bench(problem.getMessage()));
        line.getErr().println("See: " + line.getCommandSpec().qualifiedName() + " --help");
        return BAD_INPUT;
    }

    /** The library's complaint about an option's value in the technician's words. */
    private static String bench(String message) {
        Matcher choice = CHOICE.matcher(message);
        return (choice.find() ? message.substring(0, choice.start()) + choice.group(1)
            + choice.group(2).toLowerCase(Locale.ROOT) + message.substring(choice.end()) : message)
            .replace("is not a double", "is not a number").replace("is not an int", "is not a whole number")
            .replace("is not a long", "is not a whole number");
    }

    private static int failed(Exception problem, CommandLine line, CommandLine.ParseResult result) {
        if (problem instanceof BadInput bad) {
            bad.messages().forEach(message -> line.getErr().println("benchtwin: " + message));
            return BAD_INPUT;
        }
        line.getErr().println("benchtwin: this is a fault of the program, not of your input: " + problem);
        line.getErr().println("Nothing was changed. Please report the line above with the command you typed.");
        return BAD_INPUT;
    }
}
