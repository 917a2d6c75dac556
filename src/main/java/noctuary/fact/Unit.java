package noctuary.fact;

/** The units in which facts are kept; whatever the keeper types is converted to one of these. */
public enum Unit {
    NONE(""),
    COUNT(""),
    MILLIMETRE("mm"),
    METRE("m"),
    MICROMETRE("µm"),
    KILOGRAM("kg"),
    SECOND("s"),
    ARCSECOND("arcsec"),
    ARCSECOND_PER_PIXEL("arcsec/px"),
    DEGREE("deg"),
    PIXEL("px"),
    CELSIUS("°C"),
    ELECTRON("e"),
    ADU("ADU"),
    ELECTRON_PER_ADU("e/ADU"),
    PERCENT("%"),
    MAGNITUDE("mag");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The symbol as printed behind a number; empty for plain numbers. */
    public String symbol() {
        return symbol;
    }
}
