package benchtwin.picture;

import benchtwin.club.BenchTime;

/**
 * Something done to a club that can move what it measures.
 * @param when  when
 * @param words what, in the trade's words: {@code bent 0.5° upright}, {@code regripped}, {@code sole ground}
 */
public record Intervention(BenchTime when, String words) {

    /**
     * Makes the words printable.
     * @throws IllegalArgumentException when there are none
     */
    public Intervention {
        words = Words.required("intervention", words);
    }
}
