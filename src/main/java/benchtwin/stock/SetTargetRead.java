package benchtwin.stock;

import benchtwin.club.SetTargets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What reading set targets and their lines gave.
 * @param targets        everything read; empty when there was any fault, unless the good rows alone were asked for
 * @param faults         what is wrong, by file and line; at most the first 1000
 * @param warnings       what is unusual, by file and line; at most the first 1000
 * @param faultCount     how many faults there were, listed or not
 * @param warningCount   how many warnings there were, listed or not
 * @param unknownColumns columns the program does not know, by file; those of set-targets.csv are kept with their rows
 * @param rowsRead       rows seen, good or not, by file
 */
public record SetTargetRead(Optional<SetTargets> targets, List<Fault> faults, List<Fault> warnings, int faultCount,
                            int warningCount, Map<String, List<String>> unknownColumns, Map<String, Integer> rowsRead) {

    public SetTargetRead {
        faults = List.copyOf(faults);
        warnings = List.copyOf(warnings);
        unknownColumns = Collections.unmodifiableMap(new LinkedHashMap<>(unknownColumns));
        rowsRead = Collections.unmodifiableMap(new LinkedHashMap<>(rowsRead));
    }

    /**
     * Whether nothing was wrong.
     * @return true without a fault, whatever the warnings
     */
    public boolean isClean() {
        return faultCount == 0;
    }
}
