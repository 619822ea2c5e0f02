package benchtwin.stock;

import benchtwin.club.Word;
import benchtwin.measure.Taken;
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

/** One row: its texts, words and dates. A cell that is wrong adds a fault and reads as missing. */
final class Row {

    private static final int LONGEST_TAG = 80;
    private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final int EARLIEST_YEAR = 1900;
    private static final int LATEST_YEAR = 2200;

    private final Source source;
    private final RowCells cells;
    /** What the cells say in canonical spelling, by the columns' places; null where that is not kept. */
    private final String[] said;
    private boolean good = true;

    Row(Source source, RowCells cells) {
        this.source = source;
        this.cells = cells;
        this.said = source.noting() ? new String[source.kind().columns().size()] : null;
    }

    Source source() {
        return source;
    }

    RowCells cells() {
        return cells;
    }

    /** Whether nothing wrong has been found in it so far. */
    boolean isGood() {
        return good;
    }

    Column column(String name) {
        return source.kind().known(name);
    }

    /** The name a column goes by in this row: the one whose cell is filled, else the one in the header. */
    String nameInFile(String name) {
        Column column = column(name);
        return cells.isUnderOtherName(column) ? column.otherName().orElseThrow() : column.name();
    }

    Optional<String> text(String column) {
        String found = found(column(column));
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private String found(Column column) {
        String own = cells.own(column);
        return own.isEmpty() ? cells.other(column) : own;
    }

    boolean has(String column) {
        return !found(column(column)).isEmpty();
    }

    /** A text that must be there; empty text after adding a fault. */
    String need(String column) {
        return text(column).orElseGet(() -> {
            missing(column, "a value, such as " + column(column).exampleUnder(nameInFile(column)));
            return "";
        });
    }

    /** A tag that must be there: short and on one line. */
    String tag(String column) {
        String tag = need(column);
        if (tag.length() > LONGEST_TAG || tag.indexOf('\n') >= 0 || tag.indexOf('\r') >= 0) {
            fault(column, "is too long, or broken over lines", "at most %d characters on one line".formatted(LONGEST_TAG));
        } else if (!tag.isEmpty() && tag.chars().allMatch(sign -> sign == '.')) {
            fault(column, "is only dots", "a tag with a letter or a digit in it");
        }
        return tag;
    }

    <E extends Enum<E> & Word> Optional<E> word(String column, Class<E> words) {
        Optional<E> found = text(column).flatMap(text -> wordOf(column, text, words));
        found.ifPresent(word -> note(column, word.word()));
        return found;
    }

    <E extends Enum<E> & Word> Optional<E> needWord(String column, Class<E> words) {
        if (!has(column)) {
            missing(column, "one of " + String.join(", ", Words.of(words)));
        }
        return word(column, words);
    }

    /** Keeps what a cell says, in the spelling that all rows which say the same share. */
    void note(String column, String canonical) {
        if (said != null) {
            said[column(column).place()] = canonical;
        }
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
        noteList(column, found.stream().map(Word::word).toList());
        return found;
    }

    /** A list in one cell; empty when the cell is. */
    List<String> texts(String column) {
        List<String> members = new ArrayList<>();
        for (String member : text(column).map(Words::list).orElse(List.of())) {
            if (member.isEmpty()) {
                fault(column, "has an empty place in its list", "members joined by +, such as "
                    + column(column).example());
            } else {
                members.add(member);
            }
        }
        noteList(column, members);
        return members;
    }

    void noteList(String column, List<String> members) {
        if (!members.isEmpty()) {
            note(column, String.join("+", members));
        }
    }

    /** A sleeve's setting. */
    Optional<String> setting(String column) {
        Optional<String> setting = text(column).map(SettingText::of);
        setting.ifPresent(label -> note(column, label));
        return setting;
    }

    Optional<Boolean> yesOrNo(String column) {
        Optional<String> text = text(column);
        Optional<Boolean> answer = text.flatMap(Words::yesOrNo);
        if (text.isPresent() && answer.isEmpty()) {
            fault(column, "is neither yes nor no", "yes, no, true, false, 1 or 0");
        }
        answer.ifPresent(yes -> note(column, yes ? "yes" : "no"));
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

    /** When, on what and by whom the row's values were read. */
    Taken taken() {
        return new Taken(date("measured_on"), text("gauge"), text("measured_by"));
    }

    /** The cells of columns the program does not know, by their names as written; blank ones are left out. */
    Map<String, String> extra() {
        return cells.extra();
    }

    /** What names this row among the others of its file; empty when a part of it is blank or rows may repeat. */
    Optional<List<String>> key() {
        List<String> parts = new ArrayList<>();
        for (String column : source.kind().keyColumns()) {
            String text = found(column(column));
            if (text.isEmpty()) {
                return Optional.empty();
            }
            parts.add(column.equals("setting") ? SettingText.of(text) : text);
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts);
    }

    void missing(String column, String expected) {
        refuse(Optional.of(nameInFile(column)), Optional.empty(), "is blank", expected);
    }

    /** A fault with what the cell holds. */
    void fault(String column, String problem, String expected) {
        refuse(Optional.of(nameInFile(column)), text(column), problem, expected);
    }

    /** A fault with a part of what the cell holds, or under the column's other name. */
    void fault(String nameInFile, String value, String problem, String expected) {
        refuse(Optional.of(nameInFile), Optional.of(value), problem, expected);
    }

    /** A fault of the row as a whole. */
    void fault(String problem, String expected) {
        refuse(Optional.empty(), Optional.empty(), problem, expected);
    }

    private void refuse(Optional<String> column, Optional<String> value, String problem, String expected) {
        good = false;
        source.faults().add(new Fault(cells.source(), cells.line(), column, value, problem, expected));
    }

    /** A warning, save about what is in the record: that had its warnings when it was entered. */
    void warn(String column, String problem, String expected) {
        if (!source.isRecord()) {
            source.warnings().add(new Fault(cells.source(), cells.line(), Optional.of(nameInFile(column)), text(column),
                problem, expected));
        }
    }

    /** The row in canonical spelling, when what its cells say was kept; the same for all good rows that say the same. */
    SheetRow sheet() {
        Map<String, String> canonical = new LinkedHashMap<>();
        for (Column column : source.kind().columns()) {
            String cell = said[column.place()] != null ? said[column.place()] : found(column);
            if (!cell.isEmpty()) {
                canonical.put(column.recordName(), cell);
            }
        }
        return new SheetRow(source.kind(), canonical, extra());
    }
}
