package benchtwin.bench;

import benchtwin.club.SetTargets;
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
 * @param file    where the targets came from
 * @param lines   where the lines came from
 * @param remarks warnings, faults of rows that were left out, unknown columns; one line each
 */
public record WantedSets(SetTargets targets, Path file, Optional<Path> lines, List<String> remarks) {

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
        SetTargetRead read = SetTargetReader.read(targets, lines, goodRowsOnly);
        List<String> faults = new ArrayList<>(read.faults().stream().map(Fault::text).toList());
        Workshop.more(faults, read.faultCount() - read.faults().size(), "faults");
        if (read.targets().isEmpty()) {
            faults.add(Workshop.NOTHING_READ);
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
        return new WantedSets(read.targets().get(), targets, lines, remarks);
    }
}
