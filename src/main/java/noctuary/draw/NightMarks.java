package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * The mark of one night in a calendar: hours used from the base line up, hours lost on top.
 *
 * @param fullHours hours that fill the height
 */
record NightMarks(double fullHours, double height, double width) {
    private static final double LEAST = 1.5;
    private static final double UNKNOWN_RADIUS = 3.4;

    void draw(Svg svg, double x, double base, NightCalendar.Night night) {
        double top = base;
        if (!night.known()) {
            unknown(svg, x, base - 4);
            top = base - 5 - UNKNOWN_RADIUS;
        } else if (night.usedHours() > 0) {
            top = base - used(svg, x, base, night.usedHours());
        }
        if (night.lostHours() > 0) {
            lost(svg, x, top, night.lostHours());
        }
    }

    List<Key.Item> key(boolean withMoons) {
        double sample = Math.max(1, Math.floor(fullHours * 14 / height));
        List<Key.Item> items = new ArrayList<>();
        items.add(new Key.Item(Digits.fixed(sample, 0) + " h used", (svg, x, y) -> used(svg, x, y + 7, sample)));
        items.add(new Key.Item("lost", (svg, x, y) -> lost(svg, x, y + 7, sample)));
        items.add(new Key.Item("hours not known", (svg, x, y) -> unknown(svg, x, y)));
        if (withMoons) {
            items.add(new Key.Item("full Moon", (svg, x, y) -> moon(svg, x, y)));
        }
        items.add(new Key.Item("no mark: nothing recorded", (svg, x, y) -> svg.line("hair", x - 7, y, x + 6, y)));
        return items;
    }

    static void moon(Svg svg, double x, double y) {
        svg.circle("moon", x, y, 2.6);
    }

    private static void unknown(Svg svg, double x, double y) {
        svg.circle("s1 hollow", x, y, UNKNOWN_RADIUS);
    }

    private double used(Svg svg, double x, double base, double hours) {
        double high = Math.max(hours / fullHours * height, LEAST);
        svg.rect("s1 bar full", x - width / 2, base - high, width, high);
        return high;
    }

    private void lost(Svg svg, double x, double base, double hours) {
        double high = Math.max(hours / fullHours * height, LEAST);
        svg.patterned("lost bar", "lost", x - width / 2, base - high, width, high);
    }
}
