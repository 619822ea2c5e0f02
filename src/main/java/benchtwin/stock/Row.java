package benchtwin.stock;

import benchtwin.club.Word;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** One row: its texts, words and dates. A cell that is wrong adds a fault and reads as missing. */
final class Row {

    private static final int LONGEST_TAG = 80;
    private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final int EARLIEST_YEAR = 1900;
    private static final int LATEST_YEAR = 2200;

    private final Source source;
    private final Header header;
    private final CSVRecord record;
    private final long line;
    private boolean good = true;

    Row(Source source, Header header, CSVRecord record, long line) {
        this.source = source;
        this.header = header;
        this.record = record;
        this.line = line;
    }

    Source source() {
        return source;
    }

    Header.Spot spot(String column) {
        return header.spot(column);
    }

    long line() {
        return line;
    }

    /** Whether nothing wrong has been found in it so far. */
    boolean isGood() {
        return good;
    }

    /** The cell at a position, stripped; empty when blank or when there is no such column. */
    String cell(int position) {
        return position < 0 ? "" : record.get(position).replace('\u00a0', ' ').strip();
    }

    /** The name a column goes by in this row: the one whose cell is filled, else the one in the header. */
    String nameInFile(String column) {
        Header.Spot spot = header.spot(column);
        boolean other = cell(spot.position()).isEmpty() && spot.otherPosition() >= 0
            && (spot.position() < 0 || !cell(spot.otherPosition()).isEmpty());
        return other ? spot.otherName() : column;
    }

    Optional<String> text(String column) {
        Header.Spot spot = header.spot(column);
        String own = cell(spot.position());
        String found = own.isEmpty() ? cell(spot.otherPosition()) : own;
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    boolean has(String column) {
        return text(column).isPresent();
    }

    /** A text that must be there; empty text after adding a fault. */
    String need(String column) {
        return text(column).orElseGet(() -> {
            missing(column, "a value, such as " + header.spot(column).column().exampleUnder(nameInFile(column)));
            return "";
        });
    }

    /** A tag that must be there: short and on one line. */
    String tag(String column) {
        String tag = need(column);
        if (tag.length() > LONGEST_TAG || tag.indexOf('\n') >= 0 || tag.indexOf('\r') >= 0) {
            fault(column, "is too long, or broken over lines", "at most %d characters on one line".formatted(LONGEST_TAG));
        }
        return tag;
    }

    <E extends Enum<E> & Word> Optional<E> word(String column, Class<E> words) {
        return text(column).flatMap(text -> wordOf(column, text, words));
    }

    <E extends Enum<E> & Word> Optional<E> needWord(String column, Class<E> words) {
        if (!has(column)) {
            missing(column, "one of " + String.join(", ", Words.of(words)));
        }
        return word(column, words);
    }

    private <E extends Enum<E> & Word> Optional<E> wordOf(String column, String text, Class<E> words) {
        Optional<E> found = Words.find(text, words);
        if (found.isEmpty()) {
            fault(column, text, "is not a word of this column", Words.expectation(text, Words.of(words)));
        }
        return found;
    }

    /** A list of words in one cell; empty when the cell is. */
    <E extends Enum<E> & Word> Set<E> words(String column, Class<E> words) {
        Set<E> found = EnumSet.noneOf(words);
        for (String member : texts(column)) {
            wordOf(column, member, words).ifPresent(found::add);
        }
        return found;
    }

    /** A list in one cell; empty when the cell is. */
    List<String> texts(String column) {
        List<String> members = new ArrayList<>();
        for (String member : text(column).map(Words::list).orElse(List.of())) {
            if (member.isEmpty()) {
                fault(column, "has an empty place in its list", "members joined by +, such as "
                    + header.spot(column).column().example());
            } else {
                members.add(member);
            }
        }
        return members;
    }

    Optional<Boolean> yesOrNo(String column) {
        Optional<String> text = text(column);
        Optional<Boolean> answer = text.flatMap(Words::yesOrNo);
        if (text.isPresent() && answer.isEmpty()) {
            fault(column, "is neither yes nor no", "yes, no, true, false, 1 or 0");
        }
        return answer;
    }

    Optional<LocalDate> date(String column) {
        return text(column).flatMap(text -> {
            if (ISO_DATE.matcher(text).matches()) {
                try {
                    LocalDate date = LocalDate.parse(text);
                    if (date.getYear() >= EARLIEST_YEAR && date.getYear() <= LATEST_YEAR) {
                        return Optional.of(date);
                    }
                } catch (DateTimeParseException noSuchDay) {
                    // falls through to the fault, which says the same for every date that is none
                }
            }
            fault(column, "is not a date", "year-month-day, such as 2026-05-03");
            return Optional.empty();
        });
    }

    /** The cells of columns the program does not know, by their names as written; blank ones are left out. */
    Map<String, String> extra() {
        Map<String, String> extra = new LinkedHashMap<>();
        header.unknown().forEach((name, position) -> {
            if (!record.get(position).isBlank()) {
                extra.put(name, record.get(position));
            }
        });
        return extra;
    }

    /** What names this row among the others of its file; empty when a part of it is blank or rows may repeat. */
    Optional<List<String>> key() {
        List<String> parts = source.kind().keyColumns().stream()
            .map(column -> text(column).map(text -> column.equals("setting") ? SettingText.of(text) : text).orElse(""))
            .collect(Collectors.toList());
        return parts.isEmpty() || parts.contains("") ? Optional.empty() : Optional.of(parts);
    }

    void missing(String column, String expected) {
        good = false;
        source.faults().add(new Fault(source.file(), line, Optional.of(nameInFile(column)), Optional.empty(), "is blank",
            expected));
    }

    /** A fault with what the cell holds. */
    void fault(String column, String problem, String expected) {
        good = false;
        source.faults().add(new Fault(source.file(), line, Optional.of(nameInFile(column)), text(column), problem,
            expected));
    }

    /** A fault with a part of what the cell holds, or under the column's other name. */
    void fault(String nameInFile, String value, String problem, String expected) {
        good = false;
        source.faults().add(new Fault(source.file(), line, Optional.of(nameInFile), Optional.of(value), problem,
            expected));
    }

    /** A fault of the row as a whole. */
    void fault(String problem, String expected) {
        good = false;
        source.faults().add(new Fault(source.file(), line, Optional.empty(), Optional.empty(), problem, expected));
    }

    void warn(String column, String problem, String expected) {
        source.warnings().add(new Fault(source.file(), line, Optional.of(nameInFile(column)), text(column), problem,
            expected));
    }
}
