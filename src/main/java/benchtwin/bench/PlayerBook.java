package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.Note;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The players in the book. */
public final class PlayerBook {

    private static final String HAND = "hand";
    private static final String TOLERANCE = "tolerance_";

    private PlayerBook() {
    }

    /**
     * What is known of a player.
     * @param name       as typed
     * @param hand       right or left, if recorded
     * @param tolerances those the player prefers to the usual ones, in each quantity's unit
     * @param clubs      the player's clubs
     * @param jobs       the player's jobs that are not done
     * @param notes      notes on the player, oldest first
     */
    public record Player(String name, Optional<Hand> hand, Map<Quantity, Double> tolerances, List<ClubInShort> clubs,
                         List<JobInShort> jobs, List<String> notes) {

        /** Copies what it is given. */
        public Player {
            tolerances = Collections.unmodifiableMap(new EnumMap<>(tolerances.isEmpty() ? new EnumMap<>(Quantity.class)
                : new EnumMap<>(tolerances)));
            clubs = List.copyOf(clubs);
            jobs = List.copyOf(jobs);
            notes = List.copyOf(notes);
        }
    }

    /**
     * A job in one line.
     * @param number its number
     * @param words  {@code twin of C-17, due 2026-05-21, planned}
     */
    public record JobInShort(String number, String words) {

        /**
         * The line.
         * @return with the job's number before it
         */
        public String line() {
            return "job %s: %s".formatted(number, words);
        }
    }

    /**
     * A club in one line.
     * @param tag   its tag
     * @param what  category and number
     * @param state in play, backup and so on
     * @param parts its head and shaft
     */
    public record ClubInShort(String tag, String what, String state, String parts) {
    }

    /**
     * Puts a player into the book.
     * @param book       the book
     * @param name       the player's name
     * @param hand       right or left, if known
     * @param tolerances those the player prefers
     * @param note       anything else
     * @return the name as it stands in the book
     * @throws BadInput when the player is in it already
     */
    public static String add(OpenBook book, String name, Optional<Hand> hand, Map<Quantity, Double> tolerances,
                             Optional<String> note) throws BadInput {
        return book.write("player add", entry -> {
            Thing player = entry.add(ThingKind.PLAYER, name, NewEvent.of(EventKind.RECEIVED).with(facts(hand, tolerances)));
            if (note.isPresent()) {
                entry.note(player, note.get());
            }
            return player.tag();
        });
    }

    /**
     * Puts down anew what is known of a player.
     * @param book       the book
     * @param name       the player's name
     * @param hand       right or left, where it is to change
     * @param tolerances those that are to change
     * @return the name as it stands in the book
     * @throws BadInput when there is no such player, or nothing to change
     */
    public static String describe(OpenBook book, String name, Optional<Hand> hand, Map<Quantity, Double> tolerances)
        throws BadInput {
        Map<String, String> facts = facts(hand, tolerances);
        if (facts.isEmpty()) {
            throw new BadInput("nothing to change: " + book.asks(ToDo.WHAT_OF_PLAYER));
        }
        return book.write("player describe", entry -> {
            Thing player = OpenBook.need(entry, ThingKind.PLAYER, name);
            entry.add(player, NewEvent.of(EventKind.DESCRIBED).with(facts));
            return player.tag();
        });
    }

    private static Map<String, String> facts(Optional<Hand> hand, Map<Quantity, Double> tolerances) {
        Map<String, String> facts = new TreeMap<>();
        hand.ifPresent(known -> facts.put(HAND, known.word()));
        tolerances.forEach((quantity, tolerance) -> facts.put(TOLERANCE + quantity.word(), Double.toString(tolerance)));
        return facts;
    }

    /**
     * A player in one line.
     * @param name  as typed
     * @param clubs how many clubs the player has
     * @param jobs  the player's jobs that are not done
     */
    public record InShort(String name, int clubs, List<JobInShort> jobs) {
    }

    /**
     * Every player in short; of the clubs, which are many, nothing is read but whose they are.
     * @param book the book
     * @return by name
     * @throws BadInput when the book cannot be read
     */
    public static List<InShort> inShort(OpenBook book) throws BadInput {
        return book.read(view -> {
            Map<String, Integer> clubs = view.countByOwner(ThingKind.CLUB);
            Map<String, List<JobInShort>> jobs = new HashMap<>();
            view.eachState(ThingKind.JOB, text -> {
                if (JobBook.isOpen(text.standing())) {
                    StateOf job = text.whole();
                    job.state().fact("player").ifPresent(player -> jobs.computeIfAbsent(player, name -> new ArrayList<>()).add(jobInShort(job)));
                }
            });
            return view.things(ThingKind.PLAYER).stream().map(player -> new InShort(player.tag(), clubs.getOrDefault(player.tag(), 0),
                jobs.getOrDefault(player.tag(), List.of()))).sorted((a, b) -> a.name().compareToIgnoreCase(b.name())).toList();
        });
    }

    private static JobInShort jobInShort(StateOf job) {
        return new JobInShort(job.thing().tag(), JobBook.inWords(job.state()));
    }

    /**
     * Every player.
     * @param book the book
     * @return by name
     * @throws BadInput when the book cannot be read
     */
    public static List<Player> list(OpenBook book) throws BadInput {
        return book.read(view -> view.states(ThingKind.PLAYER).stream().map(player -> player(view, player))
            .sorted((a, b) -> a.name().compareToIgnoreCase(b.name())).toList());
    }

    /**
     * One player.
     * @param book the book
     * @param name the player's name
     * @return what is known
     * @throws BadInput when there is no such player
     */
    public static Player show(OpenBook book, String name) throws BadInput {
        return book.read(view -> {
            Thing player = OpenBook.need(view, ThingKind.PLAYER, name);
            return player(view, new StateOf(player, view.state(player)));
        });
    }

    private static Player player(BookView view, StateOf player) {
        String name = player.thing().tag();
        return new Player(name, hand(player), tolerances(player.state().facts()),
            view.statesOf(ThingKind.CLUB, name).stream().map(PlayerBook::clubInShort).toList(),
            view.statesOf(ThingKind.JOB, name).stream().filter(JobBook::isOpen).map(PlayerBook::jobInShort).toList(),
            view.notes(player.thing()).stream().map(Note::text).toList());
    }

    private static Optional<Hand> hand(StateOf player) {
        return player.state().fact(HAND).map(word -> word.equals(Hand.LEFT.word()) ? Hand.LEFT : Hand.RIGHT);
    }

    /**
     * The tolerances the player of a club prefers.
     * @param book the book
     * @param club the club's tag
     * @return by quantity; none where there is no such club or player
     * @throws BadInput when the book cannot be read
     */
    public static Map<Quantity, Double> tolerancesFor(OpenBook book, String club) throws BadInput {
        return book.read(view -> view.thing(ThingKind.CLUB, club).flatMap(thing -> view.state(thing).fact("player"))
            .flatMap(player -> view.thing(ThingKind.PLAYER, player)).map(player -> tolerances(view.state(player).facts()))
            .orElse(Map.of()));
    }

    /** The tolerances a player prefers, by quantity. */
    static Map<Quantity, Double> tolerances(Map<String, String> facts) {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            Optional.ofNullable(facts.get(TOLERANCE + quantity.word()))
                .ifPresent(text -> tolerances.put(quantity, Double.parseDouble(text)));
        }
        return tolerances;
    }

    private static ClubInShort clubInShort(StateOf club) {
        Map<String, String> facts = club.state().facts();
        String number = facts.containsKey("number") ? " " + facts.get("number") : "";
        return new ClubInShort(club.thing().tag(), facts.getOrDefault("category", "club") + number,
            facts.getOrDefault("state", ""), parts(facts));
    }

    private static String parts(Map<String, String> facts) {
        return List.of("head", "shaft", "grip").stream().filter(facts::containsKey).map(facts::get)
            .reduce((a, b) -> a + ", " + b).orElse("");
    }

    /** A player who may be new: found, or put into the book with this entry. */
    static Thing orNew(benchtwin.book.BookEntry entry, String name) throws BookProblem {
        Optional<Thing> known = entry.thing(ThingKind.PLAYER, name);
        return known.isPresent() ? known.get() : entry.add(ThingKind.PLAYER, name, NewEvent.of(EventKind.RECEIVED));
    }
}
