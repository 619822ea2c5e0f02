package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.LengthMethod;
import benchtwin.club.RecordedClub;
import benchtwin.measure.Reading;
import benchtwin.rules.EquipmentRules;
import benchtwin.rules.Finding;
import benchtwin.rules.RuledClub;
import benchtwin.rules.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Holds recorded clubs against the published equipment limits. */
public final class RulesService {

    /** A standard uncertainty below this counts as this where margins are compared: nothing is divided by 0. */
    private static final double SURE = 1e-9;

    private RulesService() {
    }

    /**
     * One club held against the limits.
     * @param club         the club
     * @param findings     one a limit
     * @param localInForce whether the local rules count
     */
    public record Checked(RecordedClub club, List<Finding> findings, boolean localInForce) {

        /**
         * What the club comes to: the worst of its findings that count.
         * @return not measured where none of them could be judged
         */
        public Verdict verdict() {
            List<Verdict> verdicts = findings.stream().filter(this::counts).map(Finding::verdict).toList();
            return List.of(Verdict.CLEARLY_BEYOND, Verdict.TOO_CLOSE, Verdict.CLEARLY_WITHIN).stream()
                .filter(verdicts::contains).findFirst().orElse(Verdict.NOT_MEASURED);
        }

        /**
         * Whether a finding counts toward the verdict.
         * @param finding one of this club's
         * @return false for a local rule that is not in force
         */
        public boolean counts(Finding finding) {
            return localInForce || !finding.limit().isLocal();
        }

        /**
         * The finding that counts and lies nearest its limit, or furthest beyond, by its margin in standard uncertainties.
         * @return empty where nothing was measured
         */
        public Optional<Finding> nearest() {
            return findings.stream().filter(finding -> counts(finding) && finding.value().isPresent())
                .min(Comparator.comparingDouble(finding -> finding.marginWithAllowance().orElseThrow()
                    / Math.max(finding.value().orElseThrow().standardUncertainty(), SURE)));
        }

        /**
         * Whether its length lies so near a limit that the way it was measured decides.
         * @return true where the published procedure should be followed itself
         */
        public boolean isLengthNearALimit() {
            return findings.stream().anyMatch(Finding::restsOnProcedure);
        }

        /**
         * The published list its conformity rests on.
         * @return a sentence with its source
         */
        public Optional<EquipmentRules.Information> list() {
            return EquipmentRules.publishedList(club.category());
        }
    }

    /**
     * The answer.
     * @param clubs        each club, in the order of the record
     * @param player       whose bag it is, where a bag was asked for
     * @param inPlay       how many clubs of that bag are in play
     * @param localInForce whether the local rules count
     */
    public record Answer(List<Checked> clubs, Optional<String> player, OptionalInt inPlay, boolean localInForce) {

        /**
         * How many clubs the bag has too many.
         * @return 0 where it is within, or no bag was asked for
         */
        public int tooMany() {
            return Math.max(0, inPlay.orElse(0) - EquipmentRules.MOST_CLUBS);
        }

        /**
         * Whether somebody has to look.
         * @return true where a club is clearly beyond a limit or too close to call, or the bag holds too many
         */
        public boolean isDoubtful() {
            return tooMany() > 0 || clubs.stream().anyMatch(club -> club.verdict().isDoubtful());
        }
    }

    /**
     * One club.
     * @param workshop     where it and its head are on record
     * @param tag          its tag
     * @param localInForce whether the local rules count
     * @return the answer
     * @throws BadInput when it is not on record
     */
    public static Answer club(Workshop workshop, String tag, boolean localInForce) throws BadInput {
        return new Answer(List.of(check(workshop, workshop.club(tag), localInForce)), Optional.empty(), OptionalInt.empty(),
            localInForce);
    }

    /**
     * A player's clubs, but those that are retired.
     * @param workshop     where they are on record
     * @param player       whose
     * @param localInForce whether the local rules count
     * @return the answer
     * @throws BadInput when nobody of that name has a club on record
     */
    public static Answer bag(Workshop workshop, String player, boolean localInForce) throws BadInput {
        List<String> players = workshop.inventory().clubs().stream().map(RecordedClub::player).distinct().toList();
        String whose = players.stream().filter(player.strip()::equalsIgnoreCase).findFirst().orElseThrow(() ->
            new BadInput(players.isEmpty() ? "no clubs are on record" : "no player %s has a club on record; nearest are %s"
                .formatted(player, NearNames.of(player, players))));
        List<RecordedClub> clubs = workshop.inventory().clubs().stream().filter(club -> club.player().equals(whose)).toList();
        int inPlay = (int) clubs.stream().filter(club -> club.newest().state() == ClubState.IN_PLAY).count();
        return new Answer(check(workshop, clubs, localInForce), Optional.of(whose), OptionalInt.of(inPlay), localInForce);
    }

    /**
     * Every club, but those that are retired.
     * @param workshop     where they are on record
     * @param localInForce whether the local rules count
     * @return the answer
     * @throws BadInput when there is none
     */
    public static Answer all(Workshop workshop, boolean localInForce) throws BadInput {
        if (workshop.inventory().clubs().isEmpty()) {
            throw new BadInput("no clubs are on record");
        }
        return new Answer(check(workshop, workshop.inventory().clubs(), localInForce), Optional.empty(), OptionalInt.empty(),
            localInForce);
    }

    private static List<Checked> check(Workshop workshop, List<RecordedClub> clubs, boolean localInForce) {
        return clubs.stream().filter(club -> club.newest().state() != ClubState.RETIRED)
            .map(club -> check(workshop, club, localInForce)).toList();
    }

    private static Checked check(Workshop workshop, RecordedClub club, boolean localInForce) {
        ClubRow now = club.newest();
        Optional<Head> head = now.head().flatMap(workshop.inventory()::head);
        List<ClubRow> newestFirst = club.rows().stream().filter(row -> row.head().equals(now.head())
            && row.shaft().equals(now.shaft())).sorted((a, b) -> b.measuredOn().compareTo(a.measuredOn())).toList();
        Optional<ClubRow> length = newestFirst.stream().filter(row -> row.lengthMm().isPresent()).findFirst();
        RuledClub.Readings readings = new RuledClub.Readings(length.flatMap(ClubRow::lengthMm),
            length.map(ClubRow::lengthMethod).orElse(LengthMethod.AXIS), angle(newestFirst, HeadAngles::loftDeg),
            angle(newestFirst, HeadAngles::lieDeg).or(() -> head.flatMap(h -> h.angles().lieDeg())));
        boolean readAsWood = newestFirst.stream().flatMap(row -> row.angles().stream()).map(HeadAngles::reading).findFirst()
            .or(() -> head.map(h -> h.angles().reading())).map(AngleReading::isWood).orElse(club.category().isDriverOrFairway());
        return new Checked(club, RuledClub.recorded(club.category(), readAsWood, readings, head).findings(), localInForce);
    }

    private static Optional<Reading> angle(List<ClubRow> newestFirst, Function<HeadAngles, Optional<Reading>> which) {
        return newestFirst.stream().flatMap(row -> row.angles().flatMap(which).stream()).findFirst();
    }
}
