package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.ResinTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResinReaderTest {

    @TempDir
    private Path folder;

    private ResinReader.Read read(String text) throws IOException {
        return ResinReader.read(Files.writeString(folder.resolve("resins.csv"), text));
    }

    @Test
    void readsTheRowsOfEachResinInAnyOrder() throws IOException {
        ResinReader.Read read = read("resin;temperature_c;handling_min;full_cure_h;note\nslow;25;300;24;\nquick;23;6,5;1;\n"
            + "slow;15;720;48;leaflet\n");

        assertThat(read.faults()).isEmpty();
        assertThat(read.resins()).containsExactly(
            new ResinTable("slow", List.of(new ResinTable.Row(15, 720, 2880), new ResinTable.Row(25, 300, 1440))),
            new ResinTable("quick", List.of(new ResinTable.Row(23, 6.5, 60))));
    }

    @Test
    void namesEveryFaultAtOnceAndReadsNothingThen() throws IOException {
        ResinReader.Read read = read("resin,temperature_c,handling_min,full_cure_h\nslow,15,720,48\nslow,warm,1,2\n"
            + "slow,15,700,40\nquick,23,90,1\n,23,5,1\nhot,23,0,1\nthick,20,800,30\nthick,15,720,30\n");

        assertThat(read.resins()).isEmpty();
        assertThat(read.faults()).extracting(Fault::text).containsExactly(
            "resins.csv line 3, column temperature_c: \"warm\" is not a number; expected degrees Celsius, such as 23",
            "resins.csv line 4, column temperature_c: 15 is already on line 2 for resin slow; expected every temperature_c of a "
                + "resin once",
            "resins.csv line 5, column full_cure_h: 1 is over before the joint may be handled, after 90 minutes; expected hours, "
                + "at least as long as until handling",
            "resins.csv line 6, column resin: is blank; expected a value, such as slow",
            "resins.csv line 7, column handling_min: 0 is not possible; expected minutes from 0.5 to 20160",
            "resins.csv line 8, column handling_min: 800 is longer than 720 at 15 °C, where it is colder; expected the same or "
                + "less: resin cures faster when it is warmer");
    }

    @Test
    void aFileThatIsNotThereIsAFault() {
        assertThat(ResinReader.read(folder.resolve("none.csv")).faultCount()).isEqualTo(1);
    }
}
