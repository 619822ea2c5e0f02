package benchtwin.book;

/**
 * One thing of the record.
 * @param id   its number in the file
 * @param kind what it is
 * @param tag  the name written on it, unique among its kind
 */
public record Thing(long id, ThingKind kind, String tag) {

    /**
     * As messages name it.
     * @return for instance {@code head H-014}
     */
    public String name() {
        return kind.word() + " " + tag;
    }
}
