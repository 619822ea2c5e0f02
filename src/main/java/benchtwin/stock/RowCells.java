package benchtwin.stock;

import benchtwin.measure.Reading;
import java.util.Map;

/** What one row holds and where it stands: a line of a file, or a part in the record. Blank cells are empty texts. */
interface RowCells {

    /** The cell under the column's canonical name. */
    String own(Column column);

    /** The cell under the column's name in the other unit. */
    String other(Column column);

    /** Whether the column goes by its other name: where that cell is filled, or its canonical name is not there. */
    boolean isUnderOtherName(Column column);

    /** The reading the cell rests on; null where only its text is known. */
    Reading reading(Column column);

    /** The cells of columns the program does not know, by their names as written; blank ones are left out. */
    Map<String, String> extra();

    /** What faults name first: the file, or the part in the record. */
    String source();

    /** The physical line the row starts on, from 1; 0 where there are no lines. */
    long line();

    /** The row as another row's message names it. */
    String words();
}
