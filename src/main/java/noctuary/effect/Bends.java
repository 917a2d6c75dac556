package noctuary.effect;

/** What must be added to a curve, straight between knots and level beyond them. */
record Bends(double[] at, double[] by) {
    static final Bends NONE = new Bends(new double[0], new double[0]);

    boolean none() {
        return at.length == 0;
    }

    double at(double x) {
        if (none()) {
            return 0;
        }
        int k = 0;
        while (k < at.length && at[k] < x) {
            k++;
        }
        if (k == 0 || k == at.length) {
            return by[k == 0 ? 0 : k - 1];
        }
        double part = (x - at[k - 1]) / (at[k] - at[k - 1]);
        return by[k - 1] + part * (by[k] - by[k - 1]);
    }
}
