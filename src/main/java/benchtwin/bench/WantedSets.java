package benchtwin.bench;

import benchtwin.club.Line;
import benchtwin.club.RecordedClub;
import benchtwin.club.SetTargets;
import benchtwin.club.WantedClub;
import benchtwin.match.RecordedTargets;
import benchtwin.match.Tolerances;
import benchtwin.stock.Fault;
import benchtwin.stock.SetTargetRead;
import benchtwin.stock.SetTargetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sets that are wished for, as read from files, with what was odd about them.
 * @param targets the clubs and their lines
 * @param file    where the targets came from; empty for sets taken from the record
 * @param lines   where the lines came from
 * @param remarks warnings, faults of rows that were left out, unknown columns; one line each
 */
public record WantedSets(SetTargets targets, Optional<Path> file, Optional<Path> lines, List<String> remarks) {

    public WantedSets {
        remarks = List.copyOf(remarks);
    }

    /**
     * Reads them.
     * @param targets      a file as {@code set-targets.csv}
     * @param lines        a file as {@code lines.csv}
     * @param goodRowsOnly whether the good rows are taken when others have faults
     * @return at least one club
     * @throws BadInput with every fault, when a file is bad and the good rows were not asked for; or when nothing is wished for
     */
    public static WantedSets read(Path targets, Optional<Path> lines, boolean goodRowsOnly) throws BadInput {
        return read(targets, lines, goodRowsOnly, WayIn.LINE);
    }

    /**
     * Reads those that were brought to the pages: all of them or none.
     * @param targets a file as {@code set-targets.csv}
     * @param lines   a file as {@code lines.csv}
     * @return at least one club
     * @throws BadInput with every fault, or when nothing is wished for
     */
    public static WantedSets brought(Path targets, Optional<Path> lines) throws BadInput {
        return read(targets, lines, false, WayIn.PAGES);
    }

    private static WantedSets read(Path targets, Optional<Path> lines, boolean goodRowsOnly, WayIn way) throws BadInput {
        SetTargetRead read = SetTargetReader.read(targets, lines, goodRowsOnly);
        List<String> faults = new ArrayList<>(read.faults().stream().map(Fault::text).toList());
        Workshop.more(faults, read.faultCount() - read.faults().size(), "faults");
        if (read.targets().isEmpty()) {
            faults.add("Nothing was read. " + ToDo.GOOD_ROWS.in(way));
            throw new BadInput(faults);
        }
        if (read.targets().get().clubs().isEmpty()) {
            faults.add("%s names no club that could be planned; expected one a row".formatted(targets));
            throw new BadInput(faults);
        }
        List<String> remarks = new ArrayList<>();
        read.faults().forEach(fault -> remarks.add("left out: " + fault.text()));
        Workshop.more(remarks, read.faultCount() - read.faults().size(), "faults");
        read.warnings().forEach(warning -> remarks.add(warning.text()));
        Workshop.more(remarks, read.warningCount() - read.warnings().size(), "warnings");
        read.unknownColumns().forEach((file, columns) -> remarks.add(
            "%s: columns not known here, kept as they are: %s".formatted(file, String.join(", ", columns))));
        return new WantedSets(read.targets().get(), Optional.of(targets), lines, remarks);
    }

    /**
     * Players' recorded clubs as sets to be built again.
     * @param workshop     with the record
     * @param players      whose, in any case of letters, at least one
     * @param straightened whether irons are to lie on the line through their recorded frequencies
     * @return at least one club
     * @throws BadInput when a player is not on record, or nothing recorded of any can be built to
     */
    public static WantedSets ofRecord(Workshop workshop, List<String> players, boolean straightened) throws BadInput {
        List<String> names = workshop.inventory().clubs().stream().map(RecordedClub::player).distinct().toList();
        List<String> unknown = new ArrayList<>();
        List<WantedClub> clubs = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (String typed : players) {
            Optional<String> player = names.stream().filter(typed.strip()::equalsIgnoreCase).findFirst();
            if (player.isEmpty()) {
                unknown.add(workshop.asks(ToDo.FROM_RECORD) + "no club of \"%s\" is on record; nearest are %s".formatted(typed.strip(),
                    NearNames.of(typed.strip(), names)));
                continue;
            }
            RecordedTargets recorded = RecordedTargets.of(workshop.inventory(), player.get(), Tolerances.DEFAULT, straightened);
            clubs.addAll(recorded.targets().clubs());
            lines.addAll(recorded.targets().lines());
            recorded.notes().forEach(note -> remarks.add("%s: %s".formatted(player.get(), note)));
        }
        if (!unknown.isEmpty()) {
            throw new BadInput(unknown);
        }
        if (clubs.isEmpty()) {
            remarks.add("nothing recorded of %s can be built to".formatted(String.join(", ", players)));
            throw new BadInput(remarks);
        }
        return new WantedSets(new SetTargets(clubs, lines), Optional.empty(), Optional.empty(), remarks);
    }
}
