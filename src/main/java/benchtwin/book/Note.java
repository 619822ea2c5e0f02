package benchtwin.book;

/**
 * Free text on a thing.
 * @param id    its number in the file
 * @param entry the act it was entered in
 * @param thing what it is about
 * @param text  as typed
 */
public record Note(long id, Entry entry, Thing thing, String text) {
}
