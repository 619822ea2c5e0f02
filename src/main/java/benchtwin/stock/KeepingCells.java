package benchtwin.stock;

import benchtwin.club.Keeping;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where a part is kept, from the columns all parts share. */
final class KeepingCells {

    private KeepingCells() {
    }

    static Keeping read(Row row) {
        return read(row, Map.of());
    }

    /** As the row says, with what other files' unknown columns said about the part. */
    static Keeping read(Row row, Map<String, String> more) {
        Map<String, String> extra = new LinkedHashMap<>(row.extra());
        extra.putAll(more);
        return new Keeping(row.text("reserved_for"), row.text("place"), row.text("note"), extra);
    }
}
