/**
 * Pictures for the bench: each is a record that holds what it shows and writes itself as SVG text or as PNG bytes.
 *
 * <p>A picture places numbers that somebody else worked out. It fits nothing, picks nothing and reads no files; which
 * shafts are on a ladder, and how stiff they are, is settled before. Where the file goes, and in which form, is for the
 * caller. Scales and ticks are JFreeChart's, the marks are drawn here, and one set of colours and sizes serves all.
 */
package benchtwin.picture;
