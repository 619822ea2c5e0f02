package benchtwin.bench;

import java.util.Locale;

/**
 * What somebody is told to do, in the words of either way in. Where a message says how something is done, it says it with one of
 * these, so that no page names an option and no command a field. Both wordings get the same values, by number.
 */
enum ToDo {
    // jobs
    LIST_JOBS("benchtwin job list --all lists them", "open ones stand on the page of today"),
    WHOSE_JOB("give the club with --club, or the player with --player", "fill in the club's tag or the player's name"),
    NEW_JOB("leave out --job to take on a new one", "choose from the club's own page to take on a new one"),
    ONE_PLAYERS_JOB("--job %1$s is one player's: name the player with --players", "job %1$s is one player's: plan that player alone"),
    NOTE_INSTEAD("a note: benchtwin note add job:12 TEXT", "a note"),
    PLAN_IT("Plan it: benchtwin job plan %1$s", "Choose its plan from its club's page."),
    NEW_TAG("say its tag with --as TAG", "fill in its tag"),
    THIS_TAG("--as %1$s", "%1$s"),
    LEAVE_AS("leave out --as", "leave the new club's tag empty"),
    NO_NEW_CLUB("leave out --as, or enter it with benchtwin club add", "leave the new club's tag empty, or put it in from its player's page"),
    READINGS_ELSEWHERE("leave out the readings, and enter them with benchtwin club record",
        "leave the readings empty, and enter them on the club's page"),
    OLD_CRACKED("--old-cracked", "that the old head is cracked"),
    OLD_BROKEN("--old-broken", "that the old shaft is broken"),
    GRIP_ON("enter it with benchtwin club record %1$s --grip TAG", "put it down on the page of %1$s"),
    WHERE_PARTS("Say where with benchtwin stock move TAG --to PLACE, or what is past use with benchtwin stock retire TAG",
        "Say on the page of each where it lies, or retire it there when it is past use"),
    // clubs and readings
    LIST_READINGS("benchtwin %1$s show %2$s lists them", "its page lists them"),
    SAY_WHY("a correction needs a reason, such as --why \"digits swapped\"", "a correction needs a reason, such as: digits swapped"),
    REASON("--why", "the reason"),
    ON_DAY("--on %1$s", "%1$s"),
    GIVE_DAY("give the day with --on", "fill in the day"),
    KNOWN_NOW("--known-now shows what was so that day as it is known now", "compare it on its page to see what was so that day as it is known now"),
    ADD_CLUBS("put one in with benchtwin club add, or benchtwin stock import", "put one in from the player's page, or import a file in Stock"),
    WHAT_OF_PLAYER("give --hand or --tolerance", "fill in a tolerance"),
    // twins, shafts, changes
    KEEP_NONE("use --keep none", "keep neither head nor shaft"),
    WITH_GRIP(": --grip TAG", ": fill in the grip's tag"),
    NAME_GRIP(", --grip TAG", ", by its tag, under Grip"),
    NAME_HEAD(", --head TAG", ", by its tag, under Head"),
    NAME_BOTH(": --head TAG and --grip TAG", ": fill in both tags"),
    NAME_SLEEVE("name one with --sleeve", "fill in its sleeve"),
    NAME_STIFFNESS("give a club with --club, or --target frequency=…", "start from a club, or fill in the frequency that is wanted"),
    NAME_LENGTH("give it with --length", "fill in the length that is wanted"),
    CARRY_STIFFNESS("write it with --target frequency=…", "read one of the two first, or fill in the frequency that is wanted"),
    TWIN_INSTEAD("benchtwin match makes its twin", "find its twin instead"),
    ELSE_CHANGE("benchtwin change --club %1$s says what else would", "Change something, on the page of %1$s, says what else would"),
    // bends
    BEND_TO("name a head and its angles with --to", "choose a head and fill in its angles"),
    BEND_ANGLE("give the angle wanted with --to", "fill in the angle that is wanted"),
    BEND_ANGLES("give them with --to, such as --to %1$s", "fill in the angles that are wanted"),
    TO_AND_CHANGE("is named with --to and with --change; leave one out", "is given as an angle and as a change; leave one empty"),
    SAY_ALTHOUGH("say why with --although \"WORDS\"; they are written down", "say why; the words are written down"),
    ANSWER_FOR_IT("answer for bending it with a limit and words: --limit 1 --although \"WORDS\"", "answer for bending it with a limit and words"),
    // stock, sets, tickets
    IMPORT_PARTS("benchtwin stock import reads them", "import a file in Stock"),
    GOOD_ROWS("Mend the rows above, or leave them out with --good-rows.", "Mend the rows above, and bring the file again."),
    COUNT_LEFT("put down how many are left with benchtwin stock count %1$s=N", "put down under Stock, Count how many are left"),
    CLUB_DAMAGED("enter what became of the club with benchtwin club record %1$s --state damaged",
        "put down on the page of %1$s what became of it"),
    PIN("--pin %1$s", "%1$s"),
    BAN("--ban %1$s", "%1$s"),
    PLAYERS("--players: ", ""),
    FROM_RECORD("--from-record: ", ""),
    RESIN("--resin %1$s", "resin %1$s"),
    RESIN_WHICH("say which is used with --resin", "choose which is used"),
    RESIN_TABLE("--resin %1$s: there is no table of resins; name it with --resins FILE, or put it into %2$s",
        "resin %1$s: there is no table of resins; put it into %2$s");

    private final String line;
    private final String pages;

    ToDo(String line, String pages) {
        this.line = line;
        this.pages = pages;
    }

    /**
     * In words.
     * @param way    how who is told came in
     * @param values what the words name
     */
    String in(WayIn way, Object... values) {
        return String.format(Locale.ROOT, way == WayIn.LINE ? line : pages, values);
    }
}
