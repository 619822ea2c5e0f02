package benchtwin.gauge;

/**
 * Data sets of the NIST Statistical Reference Datasets (StRD), copied by a script from the .dat files as general
 * statistics libraries carry them in their own tests; one row of an array for each group of a file.
 */
final class StrdData {

    /** SiRstv.dat, lines 61 to 85: resistance, five instruments, five readings each. */
    static final double[][] SI_RSTV = {
        {196.3052, 196.1240, 196.1890, 196.2569, 196.3403},
        {196.3042, 196.3825, 196.1669, 196.3257, 196.0422},
        {196.1303, 196.2005, 196.2889, 196.0343, 196.1811},
        {196.2795, 196.1748, 196.1494, 196.1485, 195.9885},
        {196.2119, 196.1051, 196.1850, 196.0052, 196.2090}};

    /** AtmWtAg.dat, lines 61 to 108: atomic weight of silver, two instruments, 24 readings each. */
    static final double[][] ATM_WT_AG = {
        {107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526, 107.8681494,
            107.8681616, 107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569, 107.8681508, 107.8681672,
            107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.8681360, 107.8681333, 107.8681610, 107.8681477},
        {107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365,
            107.8681151, 107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482, 107.8681334, 107.8681609,
            107.8681101, 107.8681512, 107.8681469, 107.8681360, 107.8681254, 107.8681261, 107.8681450, 107.8681368}};

    private StrdData() {
    }

    /**
     * SmLs01, SmLs04 or SmLs07, which are made by a rule that was compared with every line of the three files: nine
     * groups of 21, each its middle and then ten times 0.1 below and 0.1 above it.
     * @param leading the constant that all values start with: 1, 1000000 or 1000000000000
     */
    static double[][] smLs(String leading) {
        String[][] tenths = {{".4", ".3", ".5"}, {".3", ".2", ".4"}, {".5", ".4", ".6"}};
        int[] groups = {0, 1, 2, 1, 2, 1, 2, 1, 2};
        double[][] data = new double[groups.length][21];
        for (int group = 0; group < groups.length; group++) {
            String[] ends = tenths[groups[group]];
            for (int i = 0; i < 21; i++) {
                data[group][i] = Double.parseDouble(leading + ends[i == 0 ? 0 : i % 2 == 1 ? 1 : 2]);
            }
        }
        return data;
    }

    /** NumAcc4: 10000000.2 once, then 500 times 10000000.1 and 10000000.3. */
    static double[] numAcc4() {
        double[] data = new double[1001];
        for (int i = 0; i < data.length; i++) {
            data[i] = i == 0 ? 10000000.2 : i % 2 == 1 ? 10000000.1 : 10000000.3;
        }
        return data;
    }
}
