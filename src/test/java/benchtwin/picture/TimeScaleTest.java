package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.BenchTime;
import benchtwin.club.Quantity;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** The axis of time of a history; days of the week and leap years by the calendar of java.time. */
class TimeScaleTest {

    private static ParsedSvg between(BenchTime from, BenchTime to) {
        return new ParsedSvg(Histories.of("X", Quantity.LIE, new HistoryStrip(Histories.target(Quantity.LIE),
            List.of(HistoryReading.of(from, 58.3, 0), HistoryReading.of(to, 58.3, 0)))).svg());
    }

    private static BenchTime parsed(String text) {
        return text.contains("T") ? BenchTime.at(LocalDateTime.parse(text)) : BenchTime.on(LocalDate.parse(text));
    }

    private static List<String> labels(ParsedSvg svg, String part) {
        return svg.in(part, "text").stream().map(Element::getTextContent).toList();
    }

    /** The first ticks and what they lie within, and the words below, for spans from an hour to ten thousand years. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        2026-05-04T09:15 | 2026-05-04T10:00 | 08:00,08:30,09:00  | Mon 4 May 2026 | time by the clock at the bench, from 4 May 2026 09:15 to 10:00
        2026-05-04T09:15 | 2026-05-04T17:00 | 09:00,10:00,11:00  | Mon 4 May 2026 | time by the clock at the bench, from 4 May 2026 09:15 to 17:00
        2026-05-04T09:15 | 2026-05-05T17:00 | 12:00,18:00,00:00  | Mon 4 May 2026,Tue 5 May 2026 | time by the clock at the bench, from 4 May 2026 09:15 to 5 May 2026 17:00
        2026-05-04       | 2026-05-10       | Mon 4,Tue 5,Wed 6  | May 2026 | date, from 4 May 2026 to 10 May 2026
        2026-05-04T09:15 | 2026-05-10T17:00 | Tue 5,Wed 6,Thu 7  | May 2026 | time by the clock at the bench, from 4 May 2026 09:15 to 10 May 2026 17:00
        2026-05-25       | 2026-06-12       | 25,27,29           | May 2026,June 2026 | date, from 25 May 2026 to 12 Jun 2026
        2024-02-20       | 2024-03-20       | 19,21,23           | February 2024,March 2024 | date, from 20 Feb 2024 to 20 Mar 2024
        2025-11-05       | 2026-05-04       | Nov,Dec,Jan        | 2025,2026 | date, from 5 Nov 2025 to 4 May 2026
        2016-03-01       | 2026-02-25       | 2016,2017,2018     | | date, from 1 Mar 2016 to 25 Feb 2026
        0001-01-01       | 9999-12-31       | 2000,4000,6000     | | date, from 1 Jan 0001 to 31 Dec 9999
        """)
    void ticksAreRoundAndSayWhatTheyLieWithin(String from, String to, String first, String within, String below) {
        ParsedSvg svg = between(parsed(from), parsed(to));
        List<String> ticks = labels(svg, "axis");
        assertThat(ticks).containsSequence(first.split(","));
        assertThat(ticks.indexOf(first.split(",")[0])).as("from the left: %s", ticks).isLessThan(2);
        assertThat(labels(svg, "axis-within")).containsExactly(within == null ? new String[0] : within.split(","));
        assertThat(labels(svg, "axis-label")).containsExactly(below);
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /** For any two times: a few ticks, in order, none touching the next, and both readings on the axis where time puts them. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everySpanHasAnAxisThatCanBeRead(long seed) {
        Random random = new Random(seed);
        LocalDateTime from = LocalDateTime.of(2015, 1, 1, 0, 0).plusMinutes(random.nextInt(3_000_000));
        LocalDateTime to = from.plusMinutes((long) Math.pow(10, 7 * random.nextDouble()));
        boolean clock = random.nextInt(3) > 0;
        ParsedSvg svg = clock ? between(BenchTime.at(from), BenchTime.at(to))
            : between(BenchTime.on(from.toLocalDate()), BenchTime.on(to.toLocalDate()));
        List<Element> words = svg.in("axis", "text");
        assertThat(words).hasSizeBetween(3, 20);
        for (String part : List.of("axis", "axis-within")) {
            List<Element> row = svg.in(part, "text");
            for (int i = 1; i < row.size(); i++) {
                assertThat(ParsedSvg.box(row.get(i)).getMinX() - ParsedSvg.box(row.get(i - 1)).getMaxX())
                    .as("%s, %s", row.get(i - 1).getTextContent(), row.get(i).getTextContent()).isGreaterThan(10);
            }
        }
        if (!clock) {
            assertThat(labels(svg, "axis")).as("no clock where none was read").noneMatch(label -> label.contains(":"));
        }
        List<Element> dots = svg.in("dot", "circle");
        assertThat(number(dots.get(0), "cx")).isBetween(256.0, number(dots.get(1), "cx"));
        assertThat(number(dots.get(1), "cx")).isLessThan(944);
    }

    @Test
    void theOnlyReadingStandsInTheMiddle() {
        ParsedSvg svg = new ParsedSvg(Histories.single(Histories.at(4, 9, 15)).svg());
        assertThat(number(svg.only("dot", "circle"), "cx")).isCloseTo(600, within(0.003));
        assertThat(labels(svg, "axis-label")).containsExactly("time by the clock at the bench, 4 May 2026 09:15");
    }

    @Test
    void datesAreAsShortAsTheSpanAllows() {
        BenchTime morning = Histories.at(4, 9, 15);
        assertThat(new HistoryDates(morning, Histories.at(4, 17, 0)).brief(morning)).isEqualTo("09:15");
        assertThat(new HistoryDates(Histories.day(2026, 5, 4), morning).brief(Histories.day(2026, 5, 4))).isEqualTo("4 May");
        assertThat(new HistoryDates(morning, Histories.at(12, 17, 0)).brief(morning)).isEqualTo("4 May 09:15");
        assertThat(new HistoryDates(morning, Histories.at(13, 17, 0)).brief(morning)).isEqualTo("4 May");
        assertThat(new HistoryDates(Histories.day(2025, 12, 31), morning).brief(morning)).isEqualTo("4 May 2026");
    }
}
