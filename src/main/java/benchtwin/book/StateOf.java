package benchtwin.book;

/**
 * A thing and how it stands.
 * @param thing the thing
 * @param state how it stands
 */
public record StateOf(Thing thing, State state) {
}
