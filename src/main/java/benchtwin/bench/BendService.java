package benchtwin.bench;

import benchtwin.bend.AskPolicy;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendGoal;
import benchtwin.bend.BendRefusal;
import benchtwin.bend.HoselLimits;
import benchtwin.bend.Springback;
import benchtwin.bend.SpringbackPrior;
import benchtwin.bend.Working;
import benchtwin.book.KeptEvent;
import benchtwin.book.Promise;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.measure.Reading;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Bending sessions: which head, where to, how far its hosel may go, what is known of its metal. */
public final class BendService {

    /** So little is planned of a bend that none is needed. */
    private static final double HARDLY_BENT_DEG = 0.05;
    private static final double MOST_LIMIT_DEG = 6;
    /** Nobody reads an angle better. Memory. */
    private static final double LEAST_UNCERTAINTY_DEG = 0.01;

    /**
     * How a session is wanted.
     * @param to          angles wanted, degrees
     * @param by          changes wanted, degrees, signs as those of the angles
     * @param tolerance   how far off still counts as right, degrees; the usual where not said
     * @param uncertainty standard uncertainty of a reading, degrees; the gauge's or the usual where not said
     * @param gauge       what the angles are read on
     * @param working     how asks are held
     * @param risk        the most chance there may be of passing a far end, above 0, to 0.5
     * @param limitDeg    a limit somebody answers for, hosel tilt over the head's life, degrees
     * @param although    the words they answer with
     */
    public record Wish(Map<Quantity, Double> to, Map<Quantity, Double> by, Map<Quantity, Double> tolerance,
                       Map<Quantity, Double> uncertainty, Optional<String> gauge, Working working, double risk,
                       OptionalDouble limitDeg, Optional<String> although) {

        /** Nothing but what the record says. */
        public static final Wish PLAIN = new Wish(Map.of(), Map.of(), Map.of(), Map.of(), Optional.empty(), Working.LIVE,
            AskPolicy.DEFAULT_RISK, OptionalDouble.empty(), Optional.empty());
    }

    private final Workshop workshop;
    private final Optional<OpenBook> book;
    private final Optional<Path> file;

    private BendService(Workshop workshop, Optional<OpenBook> book, Optional<Path> file) {
        this.workshop = workshop;
        this.book = book;
        this.file = file;
    }

    /**
     * Heads of the book; bends are written there.
     * @param book the book
     * @return the service
     * @throws BadInput when the book cannot be read
     */
    public static BendService of(OpenBook book) throws BadInput {
        return new BendService(Workshop.of(book, Optional.empty(), true), Optional.of(book), Optional.empty());
    }

    /**
     * The same with the stock as it was read before.
     * @param book  the book
     * @param stock its stock, clubs as they measure now
     * @return the service
     */
    public static BendService of(OpenBook book, Workshop stock) {
        return new BendService(stock, Optional.of(book), Optional.empty());
    }

    /**
     * The number of the last thing that befell a head: while it stays the same, nobody entered anything of it.
     * @param book the book
     * @param head the head's tag
     * @return 0 when the book does not know the head
     * @throws BadInput when the book cannot be read
     */
    public static long lastEvent(OpenBook book, String head) throws BadInput {
        return book.read(view -> view.thing(ThingKind.HEAD, head).map(thing -> view.events(thing).stream().mapToLong(KeptEvent::id).max()
            .orElse(0)).orElse(0L));
    }

    /**
     * Heads of files; bends are written into a file.
     * @param workshop the stock
     * @param session  the file, made with the first entry
     * @return the service
     */
    public static BendService of(Workshop workshop, Path session) {
        return new BendService(workshop, Optional.empty(), Optional.of(session));
    }

    /**
     * The heads a job's plan bends, in order.
     * @param number the job's number
     * @return their tags, at least one
     * @throws BadInput when there is no such job, or its plan bends nothing
     */
    public List<String> headsOf(String number) throws BadInput {
        OpenBook open = book.orElseThrow(() -> new BadInput("jobs are in the book: leave out the files of the stock"));
        List<String> heads = plan(open, number).clubs().stream().filter(BendService::bends).map(club -> club.build().get("head")).toList();
        if (heads.isEmpty()) {
            throw new BadInput("the plan of job %s bends nothing; %s".formatted(number, open.asks(ToDo.BEND_TO)));
        }
        return heads;
    }

    private static JobPlan plan(OpenBook open, String number) throws BadInput {
        return open.read(view -> JobPlan.read(view.state(OpenBook.need(view, ThingKind.JOB, number))).orElse(JobPlan.NONE));
    }

    private static boolean bends(JobPlan.Club club) {
        return Math.abs(club.amounts().getOrDefault("tiltUprightDeg", 0.0)) > HARDLY_BENT_DEG
            || Math.abs(club.amounts().getOrDefault("tiltForwardDeg", 0.0)) > HARDLY_BENT_DEG;
    }

    /**
     * Opens a session for a head. Nothing is written yet.
     * @param tag  the head's tag, or that of the club it sits in
     * @param job  the job it is bent for; where none is named, the one it is promised to
     * @param wish how the session is wanted
     * @return the session, waiting for the head's angles
     * @throws BadInput when there is no such head, it is not to be bent, or the angles wanted cannot be
     */
    public BendRun open(String tag, Optional<String> job, Wish wish) throws BadInput {
        Head head = head(tag);
        double lifeLimit = lifeLimit(head, wish);
        Optional<String> forJob = job.isPresent() ? job : promisedTo(head);
        BendJournal journal = journal(forJob);
        List<BendJournal.Kept> kept = journal.bends().stream().filter(bend -> bend.model().equals(head.model())).toList();
        BendJournal.Since since = journal.since(head.tag());
        Map<Quantity, Double> recorded = angles(head);
        recorded.putAll(since.readDeg());
        Optional<JobPlan.Club> planned = forJob.isPresent() && book.isPresent() ? planned(head, forJob.get()) : Optional.empty();
        List<BendJournal.Kept> own = kept.stream().filter(bend -> bend.head().equals(head.tag())).toList();
        Map<Quantity, Double> target = target(head, recorded, wish, planned.map(club -> wanted(head, club)), own);
        BendGoal goal = new BendGoal(head.angles().reading(), target, tolerances(target, wish, planned));
        HoselLimits left = HoselLimits.of(head, lifeLimit);
        for (Map.Entry<BendDirection, Double> bent : since.bentDeg().entrySet()) {
            left = left.after(bent.getKey().tilt(bent.getValue()));
        }
        long before = own.stream().filter(bend -> bend.targetDeg().equals(target)).count();
        return new BendRun(head, goal, wish, uncertainties(head, wish), known(head, kept), left, lifeLimit, recorded, journal, forJob,
            (int) before);
    }

    private Head head(String tag) throws BadInput {
        Optional<Head> ofClub = workshop.inventory().head(tag).isPresent() ? Optional.empty()
            : workshop.inventory().clubs().stream().filter(club -> club.tag().equalsIgnoreCase(tag)).findFirst()
                .flatMap(club -> club.newest().head()).flatMap(workshop.inventory()::head);
        return ofClub.isPresent() ? ofClub.get() : workshop.head(tag);
    }

    /** The life's limit in force, once nothing speaks against bending at all. */
    private double lifeLimit(Head head, Wish wish) throws BadInput {
        Optional<BendRefusal> refusal = BendRefusal.of(head);
        String name = "head " + head.tag();
        if (refusal.isPresent() && !refusal.get().answered()) {
            throw new BadInput("%s %s".formatted(name, refusal.get().reason()));
        }
        boolean said = wish.although().isPresent() && !wish.although().get().isBlank();
        if (wish.limitDeg().isPresent()) {
            double limit = wish.limitDeg().getAsDouble();
            if (!said) {
                throw new BadInput("a limit other than the usual is somebody's to answer for: " + workshop.asks(ToDo.SAY_ALTHOUGH));
            }
            if (!(limit > 0 && limit <= MOST_LIMIT_DEG)) {
                throw new BadInput("a limit of %s degrees of hosel tilt: expected above 0 and at most %s".formatted(limit, MOST_LIMIT_DEG));
            }
            return limit;
        }
        if (refusal.isPresent()) {
            throw new BadInput("%s %s. Say what it is made of (the column material of heads.csv, imported again), or %s".formatted(name,
                refusal.get().reason(), workshop.asks(ToDo.ANSWER_FOR_IT)));
        }
        return HoselLimits.lifeLimitDeg(head.material());
    }

    private Optional<String> promisedTo(Head head) throws BadInput {
        if (book.isEmpty()) {
            return Optional.empty();
        }
        return book.get().read(view -> {
            Optional<Thing> thing = view.thing(ThingKind.HEAD, head.tag());
            List<String> jobs = thing.map(view::state).map(State::promises).orElse(List.of()).stream().map(Promise::job)
                .flatMap(Optional::stream).distinct().toList();
            return jobs.size() == 1 ? Optional.of(jobs.get(0)) : Optional.empty();
        });
    }

    private static Map<Quantity, Double> angles(Head head) {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        readings(head).forEach((quantity, reading) -> angles.put(quantity, reading.value()));
        return angles;
    }

    private static Map<Quantity, Reading> readings(Head head) {
        Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
        head.angles().loftDeg().ifPresent(reading -> readings.put(Quantity.LOFT, reading));
        head.angles().lieDeg().ifPresent(reading -> readings.put(Quantity.LIE, reading));
        head.angles().faceDeg().ifPresent(reading -> readings.put(Quantity.FACE, reading));
        head.angles().bounceDeg().ifPresent(reading -> readings.put(Quantity.BOUNCE, reading));
        return readings;
    }

    /** What a job's plan is for a head; empty when it does not bend it. */
    private Optional<JobPlan.Club> planned(Head head, String number) throws BadInput {
        return plan(book.orElseThrow(), number).clubs().stream().filter(club -> head.tag().equals(club.build().get("head")) && bends(club)
            && (club.reading().isEmpty() || club.reading().get() == head.angles().reading())).findFirst();
    }

    private static Map<Quantity, Double> wanted(Head head, JobPlan.Club plan) {
        Map<Quantity, Double> wanted = new EnumMap<>(Quantity.class);
        BendGoal.steered(head.angles().reading()).stream().filter(plan.predicted()::containsKey)
            .forEach(quantity -> wanted.put(quantity, hundredths(plan.predicted().get(quantity))));
        return wanted;
    }

    private Map<Quantity, Double> target(Head head, Map<Quantity, Double> recorded, Wish wish,
                                                Optional<Map<Quantity, Double>> planned, List<BendJournal.Kept> own)
        throws BadInput {
        Map<Quantity, Double> typed = new EnumMap<>(Quantity.class);
        typed.putAll(wish.to());
        for (Map.Entry<Quantity, Double> by : wish.by().entrySet()) {
            Double from = recorded.get(by.getKey());
            if (from == null) {
                throw new BadInput("the %s of head %s is not on record, so it cannot be changed by an amount: %s"
                    .formatted(QuantityText.name(by.getKey()), head.tag(), workshop.asks(ToDo.BEND_ANGLE)));
            }
            if (typed.put(by.getKey(), hundredths(from + by.getValue())) != null) {
                throw new BadInput("%s %s".formatted(QuantityText.name(by.getKey()), workshop.asks(ToDo.TO_AND_CHANGE)));
            }
        }
        for (Map.Entry<Quantity, Double> wanted : typed.entrySet()) {
            refuseUnsteered(head, wanted.getKey());
            AskedRange.check(wanted.getKey(), wanted.getValue());
        }
        if (!typed.isEmpty()) {
            return typed;
        }
        if (planned.isPresent()) {
            return planned.get();
        }
        if (!own.isEmpty() && !own.get(own.size() - 1).targetDeg().isEmpty()) {
            return own.get(own.size() - 1).targetDeg();
        }
        throw new BadInput("no angles were given for head %s, no plan bends it, and none of its sessions is open: %s"
            .formatted(head.tag(), workshop.asks(ToDo.BEND_ANGLES, head.isWood() ? "lie=58.5,face=0" : "loft=34,lie=62.5")));
    }

    private static void refuseUnsteered(Head head, Quantity quantity) throws BadInput {
        if (BendGoal.steered(head.angles().reading()).contains(quantity)) {
            return;
        }
        throw new BadInput(switch (quantity) {
            case LOFT -> "a wood's loft is not bent: soled it stays, square it follows the face. Give lie and face";
            case FACE -> "an iron is bent in loft and lie; it has no face angle";
            case BOUNCE -> "bounce follows the loft one for one: give the loft";
            default -> "a bend changes %s, not %s".formatted(head.isWood() ? "lie and face" : "loft and lie", QuantityText.name(quantity));
        });
    }

    private static double hundredths(double angle) {
        return Math.rint(angle * 100) / 100;
    }

    /** As typed, as the plan has them, or as usual. */
    private static Map<Quantity, Double> tolerances(Map<Quantity, Double> target, Wish wish, Optional<JobPlan.Club> planned) {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        target.keySet().forEach(quantity -> tolerances.put(quantity, wish.tolerance().getOrDefault(quantity,
            planned.map(club -> club.wanted().get(quantity)).map(Wanted::tolerance).orElse(quantity.defaultTolerance()))));
        return tolerances;
    }

    /** How well each steered angle is read: as said, as the gauge is trusted, as the reading on record was, or as usual. */
    private Map<Quantity, Double> uncertainties(Head head, Wish wish) throws BadInput {
        Map<Quantity, Double> uncertainties = new EnumMap<>(Quantity.class);
        Map<Quantity, Reading> readings = readings(head);
        for (Quantity quantity : BendGoal.steered(head.angles().reading())) {
            String column = quantity.word() + "_deg";
            OptionalDouble gauge = wish.gauge().isEmpty() || book.isEmpty() ? OptionalDouble.empty()
                : book.get().read(view -> GaugeReference.of(view).uncertainty(wish.gauge().get(), column));
            double usual = readings.containsKey(quantity) ? readings.get(quantity).standardUncertainty()
                : MeasuredColumns.uncertainty(StockKind.HEADS, column, head.isWood());
            uncertainties.put(quantity, Math.max(LEAST_UNCERTAINTY_DEG,
                wish.uncertainty().getOrDefault(quantity, gauge.orElse(usual))));
        }
        return uncertainties;
    }

    private static Map<BendDirection, Springback> known(Head head, List<BendJournal.Kept> kept) {
        Map<BendDirection, Springback> known = new EnumMap<>(BendDirection.class);
        for (BendDirection direction : BendDirection.values()) {
            Springback learned = Springback.of(SpringbackPrior.of(head.material()));
            for (BendJournal.Kept bend : kept) {
                learned = bend.direction() == direction ? learned.after(bend.trial()) : learned;
            }
            known.put(direction, learned);
        }
        return known;
    }

    private BendJournal journal(Optional<String> forJob) {
        return book.isPresent() ? new BookBends(book.get(), forJob)
            : new BendFile(file.orElseThrow(), other -> workshop.inventory().head(other).map(Head::model).orElse(""));
    }

    /**
     * What bends taught of a model in one direction.
     * @param model     the model
     * @param direction which way
     * @param known     gain, loss and how sure they are
     */
    public record Learned(String model, BendDirection direction, Springback known) {
    }

    /**
     * What the bends on record taught, of every model that was bent and is in stock.
     * @return by model and direction
     * @throws BadInput when the record cannot be read
     */
    public List<Learned> learned() throws BadInput {
        List<BendJournal.Kept> kept = journal(Optional.empty()).bends();
        Map<String, Head> models = new TreeMap<>();
        workshop.inventory().heads().forEach(head -> models.putIfAbsent(head.model(), head));
        List<Learned> all = new ArrayList<>();
        models.forEach((model, head) -> {
            Map<BendDirection, Springback> known = known(head, kept.stream().filter(bend -> bend.model().equals(model)).toList());
            known.forEach((direction, springback) -> {
                if (springback.trials() > 0) {
                    all.add(new Learned(model, direction, springback));
                }
            });
        });
        return all;
    }
}
