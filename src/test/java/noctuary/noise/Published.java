package noctuary.noise;

/**
 * Small fields that anyone can generate bit for bit, for which reference libraries' answers are known: the generator
 * x' = 1664525 x + 1013904223 mod 2^32 (constants of Numerical Recipes, from memory), uniform values x / 2^32.
 */
final class Published {
    static final int SIDE = 64;

    private Published() {}

    private static final class Uniform {
        private long state;

        Uniform(long seed) {
            this.state = seed;
        }

        double next() {
            state = (1664525L * state + 1013904223L) & 0xFFFFFFFFL;
            return state / 4294967296.0;
        }
    }

    /** 1000 + 10 (sum of 12 uniform values - 6), seed 12345. */
    static double[][] t1() {
        Uniform uniform = new Uniform(12345);
        double[][] field = new double[SIDE][SIDE];
        for (double[] row : field) {
            for (int x = 0; x < SIDE; x++) {
                double sum = 0;
                for (int i = 0; i < 12; i++) {
                    sum += uniform.next();
                }
                row[x] = 1000 + 10 * (sum - 6);
            }
        }
        return field;
    }

    /** T1 with light added to 303 pixels. */
    static double[][] t2() {
        double[][] field = t1();
        Uniform which = new Uniform(777);
        Uniform howMuch = new Uniform(4242);
        for (double[] row : field) {
            for (int x = 0; x < SIDE; x++) {
                double u = which.next();
                double v = howMuch.next();
                row[x] += u < 0.08 ? -60 * Math.log(1 - v) : 0;
            }
        }
        return field;
    }

    /** T1 on a slope of 3 a row and 2 a column. */
    static double[][] t3() {
        double[][] field = t1();
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                field[y][x] += 3 * y + 2 * x;
            }
        }
        return field;
    }

    /** T1 interpolated half a pixel to both sides: means of 2 x 2 pixels. */
    static double[][] t4() {
        double[][] t1 = t1();
        double[][] field = new double[SIDE - 1][SIDE - 1];
        for (int y = 0; y < SIDE - 1; y++) {
            for (int x = 0; x < SIDE - 1; x++) {
                field[y][x] = (t1[y][x] + t1[y][x + 1] + t1[y + 1][x] + t1[y + 1][x + 1]) / 4;
            }
        }
        return field;
    }

    static float[][] floats(double[][] field) {
        float[][] rows = new float[field.length][field[0].length];
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length; x++) {
                rows[y][x] = (float) field[y][x];
            }
        }
        return rows;
    }

    static float[][][] triples(float[][] rows) {
        float[][][] triples = new float[rows.length - 2][][];
        for (int y = 0; y < triples.length; y++) {
            triples[y] = new float[][] {rows[y], rows[y + 1], rows[y + 2]};
        }
        return triples;
    }
}
