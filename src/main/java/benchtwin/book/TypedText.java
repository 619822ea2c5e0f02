package benchtwin.book;

/** Text as people type it: kept as it is, less the characters no keyboard means to send. */
final class TypedText {

    private static final int SHOWN_CHARACTERS = 60;

    private TypedText() {
    }

    /** One line: control characters become spaces, the ends are stripped. */
    static String line(String text) {
        return whole(text).replaceAll("\\p{Cntrl}+", " ").strip();
    }

    /** Several lines: line ends are kept, every other control character becomes a space. */
    static String paragraphs(String text) {
        return whole(text).replaceAll("\\r\\n?", "\n").replaceAll("[\\p{Cntrl}&&[^\n]]", " ").strip();
    }

    /** Half of a pair of surrogates is no character and has no place in UTF-8. */
    private static String whole(String text) {
        return text.replaceAll("\\p{Cs}", "\uFFFD");
    }

    /** So much of it as a message has room for. */
    static String shown(String text) {
        String line = line(text);
        return line.codePointCount(0, line.length()) <= SHOWN_CHARACTERS ? line
            : line.substring(0, line.offsetByCodePoints(0, SHOWN_CHARACTERS)) + "…";
    }
}
