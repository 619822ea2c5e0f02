package benchtwin.web;

import benchtwin.match.Ranked;
import java.util.List;

/**
 * One option of an answer as a page shows it.
 * @param id      of its place on the page
 * @param key     what an address calls it
 * @param option  the option
 * @param title   what it is called
 * @param place   where its parts lie
 * @param lines   what is to be said of it: chance, defaults, ties
 * @param numbers before and after
 * @param base    the address whose {@code how} and {@code sketch} belong to it
 * @param asked   what the page was asked, for addresses
 */
public record OptionView(String id, String key, Ranked option, String title, String place, List<String> lines, NumberTable numbers,
                         String base, String asked) {

    /**
     * Where it is told how a number was computed.
     * @param of a quantity's word, or what {@code HowOption} calls it
     * @return an address
     */
    public String how(String of) {
        return new HowAddress(base, asked).of(key, of);
    }

    /**
     * Where its head is drawn.
     * @return an address
     */
    public String sketch() {
        return new HowAddress(base, asked).sketch(key);
    }
}
