package noctuary.demo;

/**
 * What one plane of an image collects: weights of the red, green, blue and line light, and of the sky.
 *
 * @param weights as the indices of {@link Glow}
 * @param sky against the green sky of the same magnitude
 */
record Passband(String name, double[] weights, double sky) {

    /** The planes a rig records under a filter: three for a mosaic camera or for RGB, one otherwise. */
    static Passband[] of(DemoRig rig, String filter) {
        double r = rig.response()[0];
        double g = rig.response()[1];
        double b = rig.response()[2];
        Passband red = new Passband("R", new double[] {r, 0, 0, r}, 1.15 * r);
        Passband green = new Passband("G", new double[] {0, g, 0, 0.02}, g);
        Passband blue = new Passband("B", new double[] {0, 0, b, 0.1 * b}, 1.25 * b);
        return switch (filter) {
            case "", "RGB" -> new Passband[] {red, green, blue};
            case "R" -> new Passband[] {red};
            case "G" -> new Passband[] {green};
            case "B" -> new Passband[] {blue};
            case "L" -> new Passband[] {new Passband("L", new double[] {r, g, b, r}, 1.15 * r + g + 1.25 * b)};
            case "H-alpha" ->
                new Passband[] {new Passband("H-alpha", new double[] {0.06 * r, 0, 0, 0.88 * r}, 0.045 * r)};
            default -> throw new IllegalArgumentException("no such filter: " + filter);
        };
    }

    double of(CatalogueStar star) {
        return weights[Glow.RED] * star.red() + weights[Glow.GREEN] * star.green() + weights[Glow.BLUE] * star.blue();
    }

    double of(double[] bands) {
        double sum = 0;
        for (int b = 0; b < bands.length; b++) {
            sum += weights[b] * bands[b];
        }
        return sum;
    }
}
