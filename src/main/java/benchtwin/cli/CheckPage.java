package benchtwin.cli;

import benchtwin.bench.BookCare;
import benchtwin.bench.StockBookJson;
import java.io.PrintWriter;

/** What a check of the book found, printed. */
final class CheckPage {

    private CheckPage() {
    }

    /** Prints it; the exit status says whether the book is clean. */
    static int print(BookCare.Check check, OutputOptions output, PrintWriter out) {
        if (output.isJson()) {
            out.println(StockBookJson.check(check));
        } else {
            Page page = output.page(out);
            check.findings().forEach(finding -> page.wrapped("", finding));
            page.line("%d things, %d events, %d readings: %s", check.things(), check.events(), check.readings(),
                check.findings().isEmpty() ? "all in order." : "%d not in order.".formatted(check.findings().size()));
        }
        return check.findings().isEmpty() ? Main.DONE : Main.NOTHING_SUITABLE;
    }
}
