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
import benchtwin.book.ThingKind;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
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

    private static final double MOST_LIMIT_DEG = 6;

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
     * A job that bends something.
     * @param number its number
     * @param player for whom
     * @param heads  the tags of the heads its plan bends, at least one
     */
    public record JobHeads(String number, Optional<String> player, List<String> heads) {
    }

    /**
     * The open jobs that bend something, the one due first before the others.
     * @param book the book
     * @return jobs with their heads
     * @throws BadInput when the book cannot be read
     */
    public static List<JobHeads> waiting(OpenBook book) throws BadInput {
        return new BendPlans(book).waiting();
    }

    /**
     * The heads a job's plan bends, in order.
     * @param number the job's number
     * @return their tags, at least one
     * @throws BadInput when there is no such job, or its plan bends nothing
     */
    public List<String> headsOf(String number) throws BadInput {
        OpenBook open = book.orElseThrow(() -> new BadInput("jobs are in the book: leave out the files of the stock"));
        List<String> heads = new BendPlans(open).headsOf(number);
        if (heads.isEmpty()) {
            throw new BadInput("the plan of job %s bends nothing; %s".formatted(number, open.asks(ToDo.BEND_TO)));
        }
        return heads;
    }

    /**
     * The angles a head can be bent in.
     * @param tag the head's tag, or that of the club it sits in
     * @return what is on record of each, degrees; empty where nothing is
     * @throws BadInput when there is no such head
     */
    public Map<Quantity, OptionalDouble> bendable(String tag) throws BadInput {
        Head head = head(tag);
        Map<Quantity, Double> recorded = new BendAims(workshop, book, head, Wish.PLAIN).recorded();
        Map<Quantity, OptionalDouble> angles = new EnumMap<>(Quantity.class);
        BendGoal.steered(head.angles().reading()).forEach(quantity -> angles.put(quantity,
            recorded.containsKey(quantity) ? OptionalDouble.of(recorded.get(quantity)) : OptionalDouble.empty()));
        return angles;
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
        Optional<BendPlans> plans = book.map(BendPlans::new);
        Optional<String> forJob = job.isPresent() || plans.isEmpty() ? job : plans.get().promisedTo(head);
        BendJournal journal = journal(forJob);
        List<BendJournal.Kept> kept = journal.bends().stream().filter(bend -> bend.model().equals(head.model())).toList();
        BendJournal.Since since = journal.since(head.tag());
        BendAims aims = new BendAims(workshop, book, head, wish);
        Map<Quantity, Double> recorded = aims.recorded();
        recorded.putAll(since.readDeg());
        Optional<JobPlan.Club> planned = forJob.isPresent() && plans.isPresent() ? plans.get().planned(head, forJob.get()) : Optional.empty();
        List<BendJournal.Kept> own = kept.stream().filter(bend -> bend.head().equals(head.tag())).toList();
        Map<Quantity, Double> target = aims.target(recorded, planned.map(club -> BendPlans.wanted(head, club)), own);
        BendGoal goal = new BendGoal(head.angles().reading(), target, aims.tolerances(target, planned));
        HoselLimits left = HoselLimits.of(head, lifeLimit);
        for (Map.Entry<BendDirection, Double> bent : since.bentDeg().entrySet()) {
            left = left.after(bent.getKey().tilt(bent.getValue()));
        }
        long before = own.stream().filter(bend -> bend.targetDeg().equals(target)).count();
        return new BendRun(head, goal, wish, aims.uncertainties(), known(head, kept), left, lifeLimit, recorded, journal, forJob,
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
