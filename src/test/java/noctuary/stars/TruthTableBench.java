package noctuary.stars;

/** Prints the truth table: what was planted against what was measured, row by row. */
public final class TruthTableBench {
    private TruthTableBench() {}

    /** Any argument: only the special frames. */
    public static void main(String[] args) {
        System.out.println(TruthRow.heading());
        if (args.length == 0) {
            for (double beta : new double[] {2.5, 3.5}) {
                for (double ellipticity : new double[] {0, 0.2, 0.4}) {
                    for (double fwhm : new double[] {1.4, 2, 3, 4.5, 7}) {
                        System.out.println(TruthRow.measure(SkyScenes.plain(fwhm, ellipticity, beta, 1)));
                    }
                }
            }
        }
        for (double fwhm : new double[] {2, 3.5}) {
            System.out.println(TruthRow.measure(SkyScenes.crowded(fwhm, 1)));
            System.out.println(TruthRow.measure(SkyScenes.nebula(fwhm, 1)));
            System.out.println(TruthRow.measure(SkyScenes.nearlyEmpty(fwhm, 1)));
        }
    }
}
