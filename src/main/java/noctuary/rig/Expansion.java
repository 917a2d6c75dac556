package noctuary.rig;

/**
 * How far warmth stretches a tube. Coefficients near 20 °C from public tables of linear expansion; that of carbon fibre
 * depends on the lay-up (from memory), and half of 2 is taken.
 */
public enum Expansion {
    ALUMINIUM("aluminium", 23.1e-6),
    STEEL("steel", 11.8e-6),
    CARBON_FIBRE("carbon fibre", 1e-6);

    private final String label;
    private final double perKelvin;

    Expansion(String label, double perKelvin) {
        this.label = label;
        this.perKelvin = perKelvin;
    }

    public String label() {
        return label;
    }

    /** α L ΔT, µm: negative while it cools. */
    public double shiftUm(double lengthMm, double kelvins) {
        return 1000 * perKelvin * lengthMm * kelvins;
    }

    /** Degrees after which a tube of that length has moved so far. */
    public double kelvinsFor(double lengthMm, double um) {
        return um / shiftUm(lengthMm, 1);
    }
}
