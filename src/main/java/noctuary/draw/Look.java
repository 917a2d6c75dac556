package noctuary.draw;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How one series is told from the others: by colour class, and also by shape, filling, dash and texture. */
record Look(int index) {
    private static final int COLOURS = 5;
    private static final Symbol[] SYMBOLS = Symbol.values();

    /**
     * Looks by name: first the names in the order the caller keeps on every page, then any other in order of
     * appearance.
     */
    static Map<String, Look> of(List<String> order, List<String> found) {
        Map<String, Look> looks = new LinkedHashMap<>();
        order.forEach(name -> looks.computeIfAbsent(name, n -> new Look(looks.size())));
        found.forEach(name -> looks.computeIfAbsent(name, n -> new Look(looks.size())));
        looks.keySet().retainAll(found);
        return looks;
    }

    /** The class that sets the colour. */
    String colour() {
        return "s" + (index % COLOURS + 1);
    }

    void point(Svg svg, double x, double y, double r) {
        Symbol symbol = SYMBOLS[index % SYMBOLS.length];
        boolean hollow = index % 2 == 1 || symbol == Symbol.SALTIRE;
        symbol.draw(svg, colour() + (hollow ? " hollow" : " solid"), x, y, r);
    }

    /** The class that sets the dash of a line. */
    String dash() {
        return "d" + (index % COLOURS + 1);
    }

    /** A rectangle filled with the texture of this series, outlined in its colour. */
    void bar(Svg svg, double x, double y, double width, double height) {
        if (index % COLOURS == 0) {
            svg.rect(colour() + " bar full", x, y, width, height);
        } else {
            svg.patterned(colour() + " bar", textureName(), x, y, width, height);
        }
    }

    /** The pattern that {@link #bar} refers to, to be written once inside {@code defs}. */
    void texture(Svg svg) {
        if (index % COLOURS == 0) {
            return;
        }
        Texture.values()[index % COLOURS - 1].define(svg, svg.idOf(textureName()), colour());
    }

    private String textureName() {
        return "x" + (index % COLOURS + 1);
    }
}
