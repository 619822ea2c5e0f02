package benchtwin.bench;

/** Names of quantities in the file as people say them: {@code swing_weight_points} is a swing weight. */
public final class ColumnWords {

    private ColumnWords() {
    }

    /** The name without its unit. */
    public static String name(String column) {
        return column.replaceAll("_(deg|mm|in|g|cpm|points|g_cm2|cm3|us)$", "").replace('_', ' ');
    }

    /** The unit alone, as a screen writes it. */
    public static String unit(String column) {
        return column.endsWith("_deg") ? "°" : column.endsWith("_mm") ? " mm" : column.endsWith("_cpm") ? " cpm"
            : column.endsWith("_points") ? " pt" : column.endsWith("_g_cm2") ? " g·cm²" : column.endsWith("_cm3") ? " cm³"
            : column.endsWith("_us") ? " µs" : column.endsWith("_g") ? " g" : "";
    }
}
