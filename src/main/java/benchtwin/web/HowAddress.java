package benchtwin.web;

import benchtwin.match.Ranked;

/**
 * Where the numbers of an answer's options are accounted for.
 * @param base  address of the answer's page
 * @param asked what the page was asked, for addresses
 */
public record HowAddress(String base, String asked) {

    /**
     * Of one number.
     * @param option whose
     * @param of     a quantity's word, or what {@code HowOption} calls it
     * @return an address
     */
    public String of(Ranked option, String of) {
        return of(OptionKey.of(option), of);
    }

    String of(String key, String of) {
        return base + "/how?" + more(key) + "&of=" + of;
    }

    String sketch(String key) {
        return base + "/sketch?" + more(key);
    }

    private String more(String key) {
        return (asked.isEmpty() ? "" : asked + "&") + "option=" + key;
    }
}
