package benchtwin.bench;

import benchtwin.stock.SheetRow;
import benchtwin.stock.SheetWriter;
import benchtwin.stock.StockKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes the stock as it stands now into files of the match: heads.csv, shafts.csv and so on. */
public final class StockExport {

    private StockExport() {
    }

    /**
     * Writes the files.
     * @param book   the book
     * @param folder where to
     * @return the files written
     * @throws BadInput when one is there already, or cannot be written
     */
    public static List<Path> write(OpenBook book, Path folder) throws BadInput {
        Map<StockKind, List<SheetRow>> sheets = book.read(view -> StockInventory.sheets(book, view));
        for (StockKind kind : sheets.keySet()) {
            if (Files.exists(folder.resolve(kind.fileName()))) {
                throw new BadInput("%s is there already; name a folder without it".formatted(folder.resolve(kind.fileName())));
            }
        }
        List<Path> written = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            for (Map.Entry<StockKind, List<SheetRow>> sheet : sheets.entrySet()) {
                Path file = folder.resolve(sheet.getKey().fileName());
                Files.writeString(file, SheetWriter.text(sheet.getKey(), sheet.getValue()));
                written.add(file);
            }
        } catch (IOException refused) {
            throw new BadInput("the stock cannot be written to %s: %s".formatted(folder, refused.getMessage()));
        }
        return written;
    }
}
