/**
 * Reads the workshop's CSV files into {@code club} records and reports every fault with its file, line, column, value
 * and what was expected; hands their rows on in one spelling too, and makes recorded rows into the same {@code club}
 * records. Writes stock and the wishes for sets as such files again. Computes nothing and stores nothing. The formats are
 * described in {@code docs/files.md}.
 */
package benchtwin.stock;
