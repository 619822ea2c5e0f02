package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Files whose kind nobody has said. */
class StockCheckTest {

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @ParameterizedTest
    @CsvSource({"heads.csv, HEADS", "HEADS-2026.CSV, HEADS", "heads (1).csv, HEADS", "sleeves.csv, SLEEVES",
        "sleeve-settings.csv, SLEEVE_SETTINGS", "sleeve_settings 2.csv, SLEEVE_SETTINGS", "frequencies.txt, FREQUENCIES",
        "set_targets thursday.csv, SET_TARGETS", "lines.csv, LINES"})
    void theNameTellsTheKind(String name, StockKind kind) {
        assertThat(StockCheck.kindOfName(name)).contains(kind);
    }

    @ParameterizedTest
    @CsvSource({"headstock.csv", "old heads.csv", "parts.csv"})
    void otherNamesTellNothing(String name) {
        assertThat(StockCheck.kindOfName(name)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(StockKind.class)
    void theColumnsTellTheKind(StockKind kind) throws IOException {
        Path unnamed = file("export.csv", Workshop.in(folder).text(kind));
        StockCheck check = StockCheck.check(List.of(unnamed));
        assertThat(check.faults()).extracting(Fault::text).isEmpty();
        assertThat(check.isClean()).isTrue();
        assertThat(check.files()).singleElement().satisfies(file -> {
            assertThat(file.kind()).contains(kind);
            assertThat(file.file()).isEqualTo("export.csv");
            assertThat(file.rows()).isPositive();
        });
    }

    @ParameterizedTest
    @EnumSource(StockKind.class)
    void theRequiredColumnsAloneTellTheKind(StockKind kind) {
        assertThat(StockCheck.kindOfColumns(kind.requiredColumns())).contains(kind);
    }

    @Test
    void aFileOfNoKindIsToldTheKinds() throws IOException {
        StockCheck check = StockCheck.check(List.of(file("export.csv", "tag,colour\nA,blue\n")));
        assertThat(check.files()).singleElement().satisfies(file -> assertThat(file.kind()).isEqualTo(Optional.empty()));
        assertThat(check.faults()).extracting(Fault::text).containsExactly("export.csv: is of no kind that can be told from "
            + "its name or its columns; expected one of these, with at least these columns: "
            + "heads.csv (tag, model, category, hand, adjust); "
            + "shafts.csv (tag, model, material, meant_for, raw_length_in, tip_in, tip_kind, butt_in); "
            + "grips.csv (tag, model); sleeves.csv (sleeve, fits, bore_in, turns_shaft); "
            + "weights.csv (tag, port, mass_g, count); clubs.csv (tag, player, category, hand, measured_on, state); "
            + "sleeve-settings.csv (sleeve, setting, dloft_deg, dlie_deg, reading); frequencies.csv (tag, frequency_cpm); "
            + "set-targets.csv (player, club, category, hand); "
            + "lines.csv (line, quantity, anchor_club, anchor_value, slope, per); "
            + "resins.csv (resin, temperature_c, handling_min, full_cure_h)");
    }

    @Test
    void aFileThatCannotBeOpenedIsOneFault() {
        StockCheck check = StockCheck.check(List.of(folder.resolve("nothing.csv"), folder.resolve("heads.csv"), folder));
        assertThat(check.faultCount()).isEqualTo(3);
        assertThat(check.faults()).extracting(Fault::problem).containsExactly("is not there", "is not there", "is a folder");
    }

    @Test
    void filesOfDifferentKindsAreCheckedAgainstEachOther() throws IOException {
        Workshop workshop = Workshop.in(folder).set(StockKind.CLUBS, 0, "head", "H-9");
        Path clubs = file("clubs.csv", workshop.text(StockKind.CLUBS));
        Path heads = file("heads.csv", workshop.text(StockKind.HEADS));
        assertThat(StockCheck.check(List.of(clubs, heads)).warnings()).extracting(Fault::text).containsExactly(
            "clubs.csv line 2, column head: \"H-9\" is not in heads.csv; expected something that file has (did you mean H-1?)");
        assertThat(StockCheck.check(List.of(clubs)).warnings()).isEmpty();
    }

    @Test
    void wishesAreCheckedAgainstTheirLinesAndAloneAreNotBlamedForThem() throws IOException {
        Workshop workshop = Workshop.in(folder).set(StockKind.SET_TARGETS, 1, "frequency_line", "iron");
        Path targets = file("set-targets.csv", workshop.text(StockKind.SET_TARGETS));
        Path lines = file("lines.csv", workshop.text(StockKind.LINES));
        assertThat(StockCheck.check(List.of(targets, lines)).faults()).extracting(Fault::text).containsExactly(
            "set-targets.csv line 3, column frequency_line: \"iron\" is not in lines.csv; expected something that file has "
                + "(did you mean irons?)");
        assertThat(StockCheck.check(List.of(targets)).isClean()).isTrue();
        assertThat(StockCheck.check(List.of(lines)).isClean()).isTrue();
        assertThat(StockCheck.check(List.of(lines)).warnings()).isEmpty();
    }

    @Test
    void oneFileAloneIsNotBlamedForTheOthers() throws IOException {
        Path frequencies = file("frequencies.csv", Workshop.in(folder).text(StockKind.FREQUENCIES));
        assertThat(StockCheck.check(List.of(frequencies)).faults()).isEmpty();
    }

    @Test
    void twoFilesOfOneKindStandAlone() throws IOException {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 1, "Shelf", "3");
        Path one = file("heads.csv", workshop.text(StockKind.HEADS));
        Path two = file("heads-more.csv", workshop.set(StockKind.HEADS, 0, "lie_deg", "95").text(StockKind.HEADS));
        StockCheck check = StockCheck.check(List.of(two, one, one));
        assertThat(check.faults()).extracting(Fault::text).containsExactly(
            "heads-more.csv line 2, column lie_deg: 95 is not possible; expected degrees from 30 to 90");
        assertThat(check.files()).containsExactly(
            new StockCheck.CheckedFile("heads-more.csv", Optional.of(StockKind.HEADS), 2, List.of("Shelf")),
            new StockCheck.CheckedFile("heads.csv", Optional.of(StockKind.HEADS), 2, List.of("Shelf")));
    }
}
