package benchtwin.stock;

/**
 * One file being read: what it is called, and where its faults go.
 * @param file         its name as the user knows it
 * @param kind         what its rows are
 * @param decimalComma whether a comma inside a number is a decimal comma
 * @param faults       what is wrong
 * @param warnings     what is unusual
 */
record Source(String file, StockKind kind, boolean decimalComma, FaultList faults, FaultList warnings) {
}
