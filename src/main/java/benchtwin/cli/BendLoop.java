package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BendRun;
import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.club.Quantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The loop of one head: says what to ask, takes what was read, until it is right or somebody stops. */
final class BendLoop {

    /** How a head was left. */
    enum End {
        /** Within tolerance. */
        REACHED,
        /** No further bend is safe, or the technician went on to the next head. */
        LEFT,
        /** The technician stopped, or there was nothing more to read. */
        STOPPED
    }

    private final BendRun run;
    private final BendPage page;
    private final BufferedReader lines;
    private final boolean echo;
    private final Runnable prompt;
    private Map<Quantity, Double> doubted = Map.of();

    /**
     * @param run    the session
     * @param page   where it is printed
     * @param lines  what is typed
     * @param echo   whether what is read is printed too
     * @param prompt what shows that a line is waited for
     */
    BendLoop(BendRun run, BendPage page, BufferedReader lines, boolean echo, Runnable prompt) {
        this.run = run;
        this.page = page;
        this.lines = lines;
        this.echo = echo;
        this.prompt = prompt;
    }

    End run() throws BadInput {
        page.toRead(run);
        End early = begin();
        if (early != null) {
            return early;
        }
        page.standing(run);
        while (page.advice(run, run.bentBefore() + run.session().bends().size() + 1)) {
            End end = step();
            if (end != null) {
                return end;
            }
            page.standing(run);
        }
        return run.isReached() ? End.REACHED : End.LEFT;
    }

    /** What one number alone stands for before the first bend. */
    private static Quantity only(BendRun run) {
        Set<Quantity> targets = run.goal().targetDeg().keySet();
        return targets.size() == 1 ? targets.iterator().next() : run.toRead().get(0);
    }

    private End begin() throws BadInput {
        while (!run.hasBegun()) {
            String line = next();
            if (line == null) {
                return End.STOPPED;
            }
            try {
                BendLine typed = BendLine.read(line, run.toRead(), only(run));
                End end = ends(typed);
                if (end != null) {
                    return end;
                }
                if (typed.word().isEmpty() && isSure(Optional.empty(), 0, typed)) {
                    run.begin(typed.readDeg());
                } else if (!typed.word().isEmpty()) {
                    page.help(run);
                }
            } catch (BadInput bad) {
                bad.messages().forEach(message -> page.said(sentence(message)));
            }
        }
        return null;
    }

    /** One bend or word; how the head was left where that ends it. */
    private End step() throws BadInput {
        BendAdvice.Ask ask = (BendAdvice.Ask) run.advice();
        while (true) {
            String line = next();
            if (line == null) {
                return End.STOPPED;
            }
            try {
                BendLine typed = BendLine.read(line, run.toRead(), ask.direction().quantity(run.goal().isWood()));
                End end = ends(typed);
                if (end != null) {
                    return end;
                }
                if (taken(ask, typed)) {
                    return null;
                }
            } catch (BadInput bad) {
                bad.messages().forEach(message -> page.said(sentence(message)));
            }
        }
    }

    private static End ends(BendLine typed) {
        return switch (typed.word()) {
            case "stop" -> End.STOPPED;
            case "skip" -> End.LEFT;
            default -> null;
        };
    }

    /** Whether the line changed how things stand. */
    private boolean taken(BendAdvice.Ask ask, BendLine typed) throws BadInput {
        switch (typed.word()) {
            case "again" -> {
                run.again(typed.asked(), typed.readDeg());
                page.said("Put right.");
                return true;
            }
            case "why" -> {
                page.why(run);
                return false;
            }
            case "help" -> {
                page.help(run);
                return false;
            }
            default -> {
                double asked = typed.asked().orElse(ask.askedDeg());
                if (typed.readDeg().isEmpty()) {
                    page.said("Bend, read, and type the reading: %s; or help.".formatted(BendLine.example(run.toRead())));
                    return false;
                }
                if (!isSure(Optional.of(ask.direction()), asked, typed)) {
                    return false;
                }
                run.bent(ask.direction(), asked, typed.readDeg());
                return true;
            }
        }
    }

    /** An odd value is asked for twice. */
    private boolean isSure(Optional<BendDirection> direction, double asked, BendLine typed) throws BadInput {
        Optional<String> question = run.question(direction, asked, typed.readDeg());
        boolean sure = question.isEmpty() || doubted.equals(typed.readDeg());
        doubted = sure ? Map.of() : typed.readDeg();
        if (!sure) {
            page.said(sentence(question.get()));
        }
        return sure;
    }

    private static String sentence(String message) {
        String text = message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
        return text.endsWith(".") ? text : text + ".";
    }

    private String next() throws BadInput {
        try {
            prompt.run();
            String line = lines.readLine();
            if (line != null && echo) {
                page.echo(line);
            }
            return line;
        } catch (IOException cannot) {
            throw new BadInput("what is typed cannot be read: " + cannot.getMessage());
        }
    }
}
