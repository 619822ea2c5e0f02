/**
 * Reads the workshop's CSV files into {@code club} records and reports every fault with its file, line, column, value
 * and what was expected. Computes nothing and stores nothing. The formats are described in {@code docs/files.md}.
 */
package benchtwin.stock;
