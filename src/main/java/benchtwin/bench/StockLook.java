package benchtwin.bench;

import benchtwin.stock.Fault;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.StockCheck;
import benchtwin.stock.StockFiles;
import benchtwin.stock.StockKind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Files that are to be imported, looked at: what is wrong with them row by row, and what they would change.
 * @param files      each file with its faults, in the order given
 * @param kinds      what each file holds, as {@code 12 rows of heads}
 * @param faultCount how many faults there are, shown or not
 * @param remarks    what else is to be said
 * @param read       what can be entered; empty while there are faults and the good rows were not asked for
 * @param foreseen   what entering it would come to
 */
public record StockLook(List<FaultySheet> files, List<String> kinds, int faultCount, List<String> remarks,
                        Optional<StockImport.Read> read, Optional<StockImport.Imported> foreseen) {

    /**
     * Looks at files. What each holds is told from its name, else from its columns.
     * @param book     the book they are to go into
     * @param files    the files, of which no two have one name
     * @param goodRows whether the good rows are taken when others have faults
     * @return what there is to say
     * @throws BadInput when the book cannot be read or written
     */
    public static StockLook at(OpenBook book, List<Path> files, boolean goodRows) throws BadInput {
        StockCheck check = StockCheck.check(files);
        Map<StockKind, Path> byKind = new EnumMap<>(StockKind.class);
        List<Fault> strange = new ArrayList<>(check.faults().stream().filter(fault -> unknown(check, fault)).toList());
        List<String> kinds = new ArrayList<>();
        for (int i = 0; i < check.files().size(); i++) {
            StockCheck.CheckedFile file = check.files().get(i);
            kinds.add("%d row%s%s".formatted(file.rows(), file.rows() == 1 ? "" : "s",
                file.kind().map(kind -> " of " + kind.word().replace('-', ' ')).orElse("")));
            if (file.kind().isPresent() && !file.kind().get().isStock()) {
                strange.add(whole(file, "holds %s, not stock".formatted(file.kind().get().word().replace('-', ' ')),
                    "heads, shafts, grips, sleeves, weights, clubs, sleeve settings or frequencies"));
            } else if (file.kind().isPresent() && byKind.putIfAbsent(file.kind().get(), files.get(i)) != null) {
                strange.add(whole(file, "holds %s, as another of these files does".formatted(file.kind().get().word()),
                    "one file of a kind at a time"));
            }
        }
        InventoryRead read = InventoryReader.read(StockFiles.of(byKind), false);
        List<Fault> faults = new ArrayList<>(strange);
        faults.addAll(read.faults());
        int count = strange.size() + read.faultCount();
        List<FaultySheet> sheets = FaultySheet.of(files, faults, read.warnings());
        boolean take = !byKind.isEmpty() && strange.isEmpty() && (count == 0 || goodRows);
        Optional<StockImport.Read> rows = take ? Optional.of(StockImport.read(StockFiles.of(byKind), goodRows)) : Optional.empty();
        return new StockLook(sheets, kinds, count, remarks(read), rows.filter(all -> !all.rows().isEmpty()),
            rows.isPresent() && !rows.get().rows().isEmpty() ? Optional.of(StockImport.foresee(book, rows.get())) : Optional.empty());
    }

    /** Of a file of which it could not be told what it holds. */
    private static boolean unknown(StockCheck check, Fault fault) {
        return check.files().stream().anyMatch(file -> file.file().equals(fault.file()) && file.kind().isEmpty());
    }

    private static Fault whole(StockCheck.CheckedFile file, String problem, String expected) {
        return new Fault(file.file(), 0, Optional.empty(), Optional.empty(), problem, expected);
    }

    private static List<String> remarks(InventoryRead read) {
        List<String> remarks = new ArrayList<>();
        Workshop.more(remarks, read.faultCount() - read.faults().size(), "faults");
        Workshop.more(remarks, read.warningCount() - read.warnings().size(), "odd things");
        read.unknownColumns().forEach((file, columns) -> remarks.add("%s: columns not known here, kept as they are: %s".formatted(file,
            String.join(", ", columns))));
        return remarks;
    }
}
