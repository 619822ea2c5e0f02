package benchtwin.ticket;

import java.util.Locale;
import java.util.regex.Pattern;

/** The style sheet of tickets: black on white, CSS 2.1, sizes that grow and shrink together. */
final class TicketStyle {

    private static final double POINTS = 10;
    static final double MARGIN_MM = 10;
    private static final double FOOT_MM = 12;
    private static final Pattern SIZE = Pattern.compile("(\\d+(?:\\.\\d+)?)u\\b");

    /** {@code u} is a tenth of the usual letter. */
    private static final String RULES = """
        * { margin: 0; padding: 0; }
        body { font-family: "DejaVu Sans", Verdana, Arial, sans-serif; font-size: 10u; line-height: 1.25; color: #000;
          background: #fff; }
        table { border-collapse: separate; border-spacing: 0; width: 100%; table-layout: fixed; }
        td, th { vertical-align: top; text-align: left; word-wrap: break-word; overflow-wrap: break-word; }
        .head { border-bottom: 2.5pt solid #000; }
        .head td { padding-bottom: 4u; }
        .head .code { width: 26mm; text-align: right; }
        .what { font-size: 21u; font-weight: bold; line-height: 1.1; word-wrap: break-word; }
        .who { font-size: 16u; word-wrap: break-word; }
        .due { font-size: 16u; font-weight: bold; }
        .words { font-size: 11u; word-wrap: break-word; }
        .status { font-size: 10u; font-weight: normal; padding-left: 10u; }
        .number { font-size: 34u; font-weight: bold; line-height: 1; }
        .ready { padding: 3u 0; border-bottom: 1pt solid #000; }
        .ready .when { font-weight: bold; font-size: 13u; padding-right: 6u; }
        .late { border: 3pt solid #000; padding: 4u; }
        .parts { border-bottom: 1pt solid #000; }
        .parts td { padding: 1u 4u 1u 0; line-height: 16u; }
        .parts .kind { width: 42u; }
        .parts .tag { font-size: 13u; font-weight: bold; width: 24%; }
        .parts .where { width: 34%; }
        .parts .where { font-weight: bold; }
        .tick { width: 22u; }
        .box { width: 11u; height: 11u; border: 1.5pt solid #000; margin-top: 1u; }
        .parts .box { margin-top: 2u; }
        .smallbox { display: inline-block; width: 6u; height: 6u; border: 1pt solid #000; }
        .steps > tbody > tr > td, .steps > tr > td { border-bottom: 0.5pt solid #000; padding: 4u 4u 4u 0; }
        .steps tr { page-break-inside: avoid; }
        .steps .number { width: 24u; font-size: 15u; line-height: 1; }
        .steps .write { width: 55%; padding-right: 0; }
        .title { font-size: 13u; font-weight: bold; line-height: 1.1; }
        .caution { font-size: 8u; border-left: 3pt solid #000; padding-left: 4u; margin-top: 2u; }
        .lines td { padding: 1u 3u 1u 0; border: none; vertical-align: baseline; line-height: 1.1; }
        .lines .now, .lines .tolerance { font-size: 8.5u; }
        .lines .target { font-weight: bold; font-size: 12u; }
        .lines .line { border-bottom: 0.75pt solid #000; font-size: 13u; }
        .rows { margin-top: 4u; }
        .rows th { border-bottom: 1.5pt solid #000; font-size: 8u; padding: 1u 2u; }
        .rows td { border-bottom: 0.5pt solid #000; padding: 2u; font-size: 8.5u; line-height: 1.15; }
        .rows tr { page-break-inside: avoid; }
        .rows thead { display: table-header-group; }
        .rows .club { width: 14%; font-weight: bold; font-size: 11u; }
        .rows .made { width: 22%; }
        .rows .work { line-height: 1.4; }
        .rows .measure { border-left: 0.5pt solid #000; text-align: center; }
        .rows .measure .target { font-weight: bold; font-size: 9u; white-space: nowrap; }
        .rows .measure .tolerance { font-size: 7u; padding-bottom: 11u; }
        .sketch { margin-top: 4u; text-align: center; page-break-inside: avoid; }
        .note { font-size: 9u; margin-top: 3u; word-wrap: break-word; }
        .first { padding: 3u 0; font-size: 9u; border-bottom: 1pt solid #000; }
        .foot { font-size: 7u; margin-top: 3u; }
        """;

    private TicketStyle() {
    }

    /**
     * The style sheet.
     * @param paper what it is printed on
     * @param size  letters as part of the usual size
     */
    static String of(Paper paper, double size) {
        String page = String.format(Locale.ROOT, """
            @page { size: %.1fmm %.1fmm; margin: %.0fmm %.0fmm %.0fmm %.0fmm;
              @bottom-right { content: counter(page) " of " counter(pages); font-family: "DejaVu Sans"; font-size: 7pt; } }
            @media screen { body { max-width: %.0fmm; margin: 0 auto; padding: 4mm; } }
            """, paper.widthMm(), paper.heightMm(), MARGIN_MM, MARGIN_MM, FOOT_MM, MARGIN_MM, paper.widthMm());
        return page + SIZE.matcher(RULES).replaceAll(found -> String.format(Locale.ROOT, "%.2fpt",
            Double.parseDouble(found.group(1)) * size * POINTS / 10));
    }
}
