package benchtwin.cli;

import benchtwin.bench.ActJson;
import java.io.PrintWriter;
import java.util.List;

/** What came of an act at the book, printed. */
final class Said {

    private Said() {
    }

    /**
     * Prints it.
     * @param act      the command, such as {@code stock move}
     * @param of       tags, names or numbers of what it was done to
     * @param sentence what was done
     * @param remarks  what else is worth knowing, a sentence each
     * @return the exit status
     */
    static int print(OutputOptions output, PrintWriter out, String act, List<String> of, String sentence, List<String> remarks) {
        if (output.isJson()) {
            out.println(ActJson.text(act, of, sentence, remarks));
        } else {
            Page page = output.page(out);
            page.wrapped("", sentence);
            remarks.forEach(remark -> page.wrapped("", sentence(remark)));
        }
        return Main.DONE;
    }

    private static String sentence(String remark) {
        return remark.endsWith(".") ? remark : remark + ".";
    }
}
