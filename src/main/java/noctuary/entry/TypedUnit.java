package noctuary.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.fact.Unit;

/**
 * The units a keeper may type, each with its exact size in the first unit of its kind.
 *
 * <p>Sizes of the inch and the pound: international yard and pound agreement of 1959; ounce: a sixteenth of a pound
 * (NIST SP 811, appendix B.8). Temperatures are the one kind with an offset and are converted in {@link TypedQuantity}.
 */
enum TypedUnit {
    METRE(Kind.LENGTH, "1", "m", "metre", "metres", "meter", "meters"),
    MILLIMETRE(Kind.LENGTH, "0.001", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CENTIMETRE(Kind.LENGTH, "0.01", "cm", "centimetre", "centimetres"),
    MICROMETRE(Kind.LENGTH, "0.000001", "µm", "micron", "microns", "mu", "micrometre", "micrometer"),
    INCH(Kind.LENGTH, "0.0254", "in", "inch", "inches", "\"", "''", "″"),
    KILOGRAM(Kind.MASS, "1", "kg", "kilo", "kilos", "kgs", "kilogram", "kilograms"),
    GRAM(Kind.MASS, "0.001", "g", "gr", "gram", "grams"),
    POUND(Kind.MASS, "0.45359237", "lb", "lbs", "pound", "pounds"),
    OUNCE(Kind.MASS, "0.028349523125", "oz", "ounce", "ounces"),
    SECOND(Kind.TIME, "1", "s", "sec", "secs", "second", "seconds"),
    MINUTE(Kind.TIME, "60", "min", "mins", "minute", "minutes"),
    HOUR(Kind.TIME, "3600", "h", "hr", "hrs", "hour", "hours"),
    ARCSECOND(Kind.ANGLE, "1", "arcsec", "\"", "''", "″", "as", "arcseconds", "asec"),
    ARCMINUTE(Kind.ANGLE, "60", "arcmin", "'", "′", "arcminutes", "amin"),
    DEGREE(Kind.ANGLE, "3600", "deg", "degree", "degrees", "º"),
    CELSIUS(Kind.TEMPERATURE, "1", "°C", "C", "degC", "celsius"),
    FAHRENHEIT(Kind.TEMPERATURE, "1", "°F", "F", "degF", "fahrenheit"),
    ELECTRON(Kind.CHARGE, "1", "e", "electron", "electrons", "el"),
    ADU(Kind.NUMBER, "1", "ADU", "DN", "counts"),
    ELECTRON_PER_ADU(Kind.GAIN, "1", "e/ADU", "e/DN", "ADU/e", "electrons/ADU"),
    PIXEL(Kind.PIXELS, "1", "px", "pixel", "pixels", "pix");

    enum Kind {
        LENGTH("a length"),
        MASS("a mass"),
        TIME("a time"),
        ANGLE("an angle"),
        TEMPERATURE("a temperature"),
        CHARGE("a number of electrons"),
        NUMBER("a sensor count"),
        GAIN("a gain in electrons per count"),
        PIXELS("a number of pixels");

        private final String phrase;

        Kind(String phrase) {
            this.phrase = phrase;
        }

        String phrase() {
            return phrase;
        }
    }

    private final Kind kind;
    private final BigDecimal size;
    private final String symbol;
    private final List<String> misspelt;

    TypedUnit(Kind kind, String size, String symbol, String... misspelt) {
        this.kind = kind;
        this.size = new BigDecimal(size);
        this.symbol = symbol;
        this.misspelt = List.of(misspelt);
    }

    Kind kind() {
        return kind;
    }

    BigDecimal size() {
        return size;
    }

    String symbol() {
        return symbol;
    }

    /** By symbol; both micro signs, {@code um}, {@code °} and {@code e-} are taken as well. */
    static Optional<TypedUnit> of(String typed) {
        String symbol = switch (typed) {
            case "μm", "um" -> "µm";
            case "°" -> "deg";
            case "e-", "e⁻" -> "e";
            case "e-/ADU", "e⁻/ADU" -> "e/ADU";
            case "℃" -> "°C";
            case "℉" -> "°F";
            default -> typed;
        };
        return Stream.of(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }

    /** The unit of this kind that another spelling most likely meant. */
    static Optional<TypedUnit> meant(String typed, Kind kind) {
        List<TypedUnit> ofKind = ofKind(kind);
        Optional<TypedUnit> spelt = ofKind.stream()
                .filter(unit -> Stream.concat(Stream.of(unit.symbol), unit.misspelt.stream())
                        .anyMatch(typed::equalsIgnoreCase))
                .findFirst();
        List<String> symbols = ofKind.stream().map(TypedUnit::symbol).toList();
        return spelt.or(() -> Nearest.to(typed, symbols).flatMap(TypedUnit::of));
    }

    static List<TypedUnit> ofKind(Kind kind) {
        return Stream.of(values()).filter(unit -> unit.kind == kind).toList();
    }

    /** The typed unit that equals a kept one. */
    static TypedUnit of(Unit kept) {
        return of(kept.symbol()).orElseThrow(() -> new IllegalArgumentException("no typed unit for " + kept));
    }
}
