package benchtwin.stock;

/**
 * One file being read, or one kind of part out of the record.
 * @param kind         what its rows are
 * @param form         how its cells are written
 * @param noting       whether its rows keep what their cells say in canonical spelling
 * @param faults       what is wrong
 * @param warnings     what is unusual
 */
record Source(StockKind kind, Form form, boolean noting, FaultList faults, FaultList warnings) {

    /** How cells are written. */
    enum Form {
        /** By hand or a spreadsheet, a comma between the cells. */
        TYPED,
        /** The same with another separator, so that a comma inside a number is a decimal comma. */
        TYPED_WITH_DECIMAL_COMMA,
        /** In the record: accepted before, so that nothing about it is worth a warning. */
        RECORDED
    }

    boolean decimalComma() {
        return form == Form.TYPED_WITH_DECIMAL_COMMA;
    }

    boolean isRecord() {
        return form == Form.RECORDED;
    }
}
