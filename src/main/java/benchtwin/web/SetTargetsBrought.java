package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.FaultySheet;
import benchtwin.bench.WantedSets;
import benchtwin.stock.StockCheck;
import benchtwin.stock.StockKind;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The sets that are wanted, as files brought to the pages.
 * @param sets   what they want; empty when there was no file, or they have faults
 * @param sheets the files with their faults beside the rows, when they have any
 * @param wrong  how many faults there are, in words
 */
record SetTargetsBrought(Optional<WantedSets> sets, List<FaultySheet> sheets, List<String> wrong) {

    static SetTargetsBrought of(Context ctx) throws BadInput {
        List<UploadedFile> brought = ctx.isMultipartFormData() ? ctx.uploadedFiles("files").stream()
            .filter(file -> !file.filename().isBlank()).toList() : List.of();
        if (brought.isEmpty()) {
            return new SetTargetsBrought(Optional.empty(), List.of(), List.of());
        }
        List<Path> files = Uploads.lay(brought);
        try {
            return read(files);
        } finally {
            Uploads.remove(files);
        }
    }

    private static SetTargetsBrought read(List<Path> files) throws BadInput {
        StockCheck check = StockCheck.check(files);
        if (!check.isClean()) {
            return new SetTargetsBrought(Optional.empty(), FaultySheet.of(files, check.faults(), check.warnings()),
                List.of("%d fault%s: nothing is planned. Mend the rows below and bring the files again.".formatted(check.faultCount(),
                    check.faultCount() == 1 ? "" : "s")));
        }
        Optional<Path> targets = one(check, files, StockKind.SET_TARGETS);
        if (targets.isEmpty()) {
            throw new BadInput("none of these files says which clubs are wanted; expected one like set-targets.csv, and lines.csv with it "
                + "where clubs lie on lines");
        }
        return new SetTargetsBrought(Optional.of(WantedSets.brought(targets.get(), one(check, files, StockKind.LINES))), List.of(), List.of());
    }

    private static Optional<Path> one(StockCheck check, List<Path> files, StockKind kind) throws BadInput {
        List<Path> found = files.stream().filter(file -> check.files().get(files.indexOf(file)).kind().equals(Optional.of(kind))).toList();
        if (found.size() > 1) {
            throw new BadInput("%s and %s both hold %s; expected one".formatted(found.get(0).getFileName(), found.get(1).getFileName(),
                kind.word().replace('-', ' ')));
        }
        return found.stream().findFirst();
    }
}
