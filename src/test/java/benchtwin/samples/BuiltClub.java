package benchtwin.samples;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.samples.CsvTable.Row;
import java.util.List;
import java.util.Optional;

/**
 * A club as built, and what was read on it.
 * @param head       its head
 * @param shaft      its shaft
 * @param sleeve     its sleeve, if any
 * @param grip       its grip
 * @param headDraft  where its head came from
 * @param shaftDraft where its shaft came from
 * @param rows       its rows, oldest first
 */
record BuiltClub(Head head, Shaft shaft, Optional<Sleeve> sleeve, Grip grip, HeadDraft headDraft, ShaftDraft shaftDraft,
                 List<Row> rows) {

    /** A number of its last measured row. */
    double lastRead(String column) {
        return rows.stream().map(row -> row.get(column)).filter(cell -> !cell.isEmpty()).mapToDouble(Double::parseDouble)
            .reduce((earlier, later) -> later).orElseThrow();
    }
}
