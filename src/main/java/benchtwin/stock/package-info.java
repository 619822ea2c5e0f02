/**
 * Reads the workshop's CSV files into {@code club} records and reports every fault with its file, line, column, value
 * and what was expected. Computes nothing and stores nothing.
 */
package benchtwin.stock;
