package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.LengthMethod;
import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import benchtwin.club.WeighedWith;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page that describes the files says what the program does. */
class FilesPageTest {

    private static final Path PAGE = Path.of("docs/files.md");

    @TempDir
    Path folder;

    /** The cells of a kind's table, by column name. */
    private static Map<String, List<String>> table(StockKind kind) throws IOException {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        boolean inside = false;
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("## ")) {
                inside = line.equals("## " + kind.fileName());
            } else if (inside && line.startsWith("| `")) {
                List<String> cells = Arrays.stream(line.split("\\|")).map(String::strip).toList();
                rows.put(cells.get(1).replaceAll("^`([^`]+)`.*", "$1"), cells);
            }
        }
        return rows;
    }

    @ParameterizedTest
    @EnumSource(StockKind.class)
    void everyColumnIsThereWithItsOtherNameNeedAndExample(StockKind kind) throws IOException {
        Map<String, List<String>> table = table(kind);
        assertThat(table.keySet()).containsExactlyElementsOf(kind.columns().stream().map(Column::name).toList());
        for (Column column : kind.columns()) {
            List<String> cells = table.get(column.name());
            assertThat(cells.get(1)).isEqualTo("`" + column.name() + "`"
                + column.otherName().map(other -> " or `" + other + "`").orElse(""));
            assertThat(cells.get(2)).as(column.name()).isEqualTo(column.required() ? "yes" : "");
            assertThat(cells.get(3)).as(column.name()).isNotEmpty();
            assertThat(cells.get(4)).as(column.name()).isNotEmpty();
            assertThat(cells.get(5)).isEqualTo("`" + column.example() + "`");
        }
    }

    @Test
    void everyAllowedWordIsThere() throws IOException {
        assertWords(StockKind.HEADS, "category", Words.of(Category.class));
        assertWords(StockKind.HEADS, "hand", Words.of(Hand.class));
        assertWords(StockKind.HEADS, "reading", Words.of(AngleReading.class));
        assertWords(StockKind.HEADS, "weighed_with", Words.of(WeighedWith.class));
        assertWords(StockKind.HEADS, "bore_kind", Words.of(TipKind.class));
        assertWords(StockKind.HEADS, "material", Words.of(HeadMaterial.class));
        assertWords(StockKind.HEADS, "adjust", Words.of(Adjust.class));
        assertWords(StockKind.HEADS, "condition", Words.of(HeadCondition.class));
        assertWords(StockKind.SHAFTS, "material", Words.of(ShaftMaterial.class));
        assertWords(StockKind.SHAFTS, "tip_kind", Words.of(TipKind.class));
        assertWords(StockKind.SHAFTS, "condition", Words.of(ShaftCondition.class));
        assertWords(StockKind.CLUBS, "length_method", Words.of(LengthMethod.class));
        assertWords(StockKind.CLUBS, "state", Words.of(ClubState.class));
        assertWords(StockKind.SLEEVE_SETTINGS, "reading", Words.of(AngleReading.class));
        assertWords(StockKind.SET_TARGETS, "group_rule", Words.of(GroupRule.class));
        assertWords(StockKind.LINES, "per", Words.of(LinePer.class));
        assertWords(StockKind.LINES, "quantity", Line.quantities().stream().map(Quantity::word).toList());
    }

    private static void assertWords(StockKind kind, String column, List<String> words) throws IOException {
        assertThat(table(kind).get(column).get(3)).contains(words.stream().map(word -> "`" + word + "`").toList());
    }

    /**
     * A row of all the page's examples, less what cannot stand together: a head is either bored or sleeved, and an iron has
     * no face angle.
     */
    @ParameterizedTest
    @EnumSource(StockKind.class)
    void theExamplesAreGoodCells(StockKind kind) {
        List<String> apart = switch (kind) {
            case HEADS -> List.of("sleeve_fit", "seat_to_ground_mm", "read_at_setting");
            case SET_TARGETS -> List.of("face_deg", "face_tol_deg", "face_weight");
            default -> List.of();
        };
        for (boolean otherNames : new boolean[] {false, true}) {
            String[] cells = kind.columns().stream().filter(column -> !apart.contains(column.name())).map(column -> {
                String name = otherNames ? column.otherName().orElse(column.name()) : column.name();
                return name + "=" + column.exampleUnder(name);
            }).toArray(String[]::new);
            Workshop.emptyIn(folder).row(kind, cells).write();
            StockCheck check = StockCheck.check(List.of(folder.resolve(kind.fileName())));
            assertThat(Stream.concat(check.faults().stream(), check.warnings().stream()).map(Fault::text)
                .filter(text -> !text.contains("do not add up"))).as(kind.fileName()).isEmpty();
            assertThat(check.files().get(0).unknownColumns()).isEmpty();
        }
    }

    @Test
    void theUsualRangesAreThoseOfTheProgram() throws IOException {
        Map<String, String> columns = Map.of("loft, °", "loft_deg", "lie, °", "lie_deg", "head mass, g", "mass_g",
            "club length, mm", "length_in");
        List<String> seen = new ArrayList<>();
        for (String line : Files.readAllLines(PAGE)) {
            List<String> cells = Arrays.stream(line.split("\\|")).map(String::strip).toList();
            String column = cells.size() == 8 ? columns.get(cells.get(1)) : null;
            if (column == null) {
                continue;
            }
            seen.add(column);
            for (Category category : Category.values()) {
                Range range = Ranges.of(column.equals("length_in") ? StockKind.CLUBS : StockKind.HEADS, column,
                    Optional.of(category));
                assertThat(cells.get(2 + category.ordinal())).as("%s of a %s", column, category.word()).isEqualTo(
                    (NumberText.write(range.usualLeast(), 1) + " to " + NumberText.write(range.usualMost(), 1))
                        .replace('-', '−'));
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(columns.values());
    }
}
