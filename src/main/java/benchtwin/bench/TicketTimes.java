package benchtwin.bench;

import benchtwin.club.ResinTable;
import benchtwin.club.StepKind;
import benchtwin.match.ShopSettings;
import benchtwin.measure.PlainNumber;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketReady;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** When a job's work can be handed over: bench minutes, then the longest of cure and drying. */
final class TicketTimes {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final long SECONDS_A_MINUTE = 60;

    private final TicketWish wish;
    private final LocalDateTime start;
    private final List<JobPlan.Task> tasks;
    private final Optional<String> due;

    /**
     * @param wish  resin and temperature
     * @param start when the work begins
     * @param tasks all that is done
     * @param due   by when, as a job has it
     */
    TicketTimes(TicketWish wish, LocalDateTime start, List<JobPlan.Task> tasks, Optional<String> due) {
        this.wish = wish;
        this.start = start;
        this.tasks = List.copyOf(tasks);
        this.due = due;
    }

    private boolean waits(StepKind.Wait wait) {
        return tasks.stream().anyMatch(task -> task.kind().filter(kind -> kind.waitFor() == wait).isPresent());
    }

    private boolean bonds() {
        return waits(StepKind.Wait.CURE);
    }

    /** The resin's times at the day's temperature, where they are stated. */
    private Optional<ResinTable.Row> cure() {
        return wish.resin().isEmpty() || wish.temperatureC().isEmpty() ? Optional.empty()
            : wish.resin().get().at(wish.temperatureC().getAsDouble());
    }

    TicketReady ready() {
        if (tasks.isEmpty()) {
            return without("Not planned yet, so no hand-over is worked out.");
        }
        if (tasks.stream().anyMatch(task -> task.minutes().isEmpty())) {
            return without("This plan was kept without its times, so no hand-over is worked out; plan the job again to have one.");
        }
        if (bonds() && cure().isEmpty()) {
            return without(whyNoCure());
        }
        double dry = waits(StepKind.Wait.DRY) ? ShopSettings.DEFAULT.dryMinutes() : 0;
        double minutes = minutes(tasks);
        LocalDateTime handOver = after(minutes + Math.max(dry, bonds() ? cure().orElseThrow().fullCureMinutes() : 0));
        boolean late = due.filter(day -> handOver.isAfter(end(day))).isPresent();
        return new TicketReady(Optional.of(handOver), handling(), late, words(minutes, dry)
            + (late ? " That is after the job is due, %s.".formatted(due.orElseThrow()) : ""));
    }

    private TicketReady without(String why) {
        return new TicketReady(Optional.empty(), Optional.empty(), false, why);
    }

    private String whyNoCure() {
        if (wish.resin().isEmpty()) {
            return "No resin table: follow the resin maker's sheet for handling and full cure. No hand-over is worked out.";
        }
        ResinTable resin = wish.resin().get();
        if (wish.temperatureC().isEmpty()) {
            return "Resin %s: the temperature at the bench was not given, so no hand-over is worked out. Follow the maker's sheet."
                .formatted(resin.resin());
        }
        return "Resin %s: its maker states nothing for %s °C, only %s. No hand-over is worked out; follow the maker's sheet.".formatted(
            resin.resin(), PlainNumber.text(wish.temperatureC().getAsDouble()), resin.coldestC() == resin.warmestC()
                ? "%s °C".formatted(PlainNumber.text(resin.coldestC())) : "%s to %s °C".formatted(PlainNumber.text(resin.coldestC()),
                    PlainNumber.text(resin.warmestC())));
    }

    private String words(double minutes, double dry) {
        String bench = "Start %s, %s at the bench".formatted(WHEN.format(start), time(minutes));
        String resin = bonds() ? "; resin %s at %s °C: handle after %s, full cure after %s".formatted(wish.resin().orElseThrow().resin(),
            PlainNumber.text(wish.temperatureC().orElseThrow()), time(cure().orElseThrow().handlingMinutes()),
            time(cure().orElseThrow().fullCureMinutes())) : "";
        return bench + resin + (dry > 0 ? "; %s to dry under the grip".formatted(time(dry)) : "") + ".";
    }

    /** From when the joint may be handled. */
    private Optional<LocalDateTime> handling() {
        return bonds() ? cure().map(cure -> after(minutes(tasks.stream().filter(TicketSteps::isUpToGlue).toList())
            + cure.handlingMinutes())) : Optional.empty();
    }

    /** What is written down while it cures, with the times that were worked out. */
    List<TicketLine> cureLines() {
        TicketReady ready = ready();
        return List.of(new TicketLine("handle from", Optional.empty(), Optional.empty(), ready.handling().map(WHEN::format), Optional.empty()),
            new TicketLine("full cure", Optional.empty(), Optional.empty(), ready.handOver().map(WHEN::format), Optional.empty()));
    }

    private static double minutes(List<JobPlan.Task> some) {
        return some.stream().map(JobPlan.Task::minutes).mapToDouble(OptionalDouble::orElseThrow).sum();
    }

    /** Never earlier than worked out: what is left of a minute counts as one. */
    private LocalDateTime after(double minutes) {
        return start.plus(Duration.ofSeconds((long) Math.ceil(minutes - 1e-9) * SECONDS_A_MINUTE));
    }

    /** A day without an hour ends at its end. */
    private static LocalDateTime end(String due) {
        return due.length() > 10 ? LocalDateTime.parse(due.replace(' ', 'T')) : LocalDate.parse(due).atTime(LocalTime.MAX);
    }

    private static String time(double minutes) {
        long whole = (long) Math.ceil(minutes - 1e-9);
        long hours = whole / 60;
        return whole < 120 ? whole + " min" : hours + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
    }
}
