package noctuary.draw;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The nine zones of the field in numbers: FWHM, its difference from the central zone, ellipticity with its direction as
 * a whisker, and how many stars say so. Row 0 is at the bottom.
 *
 * @param unit of the FWHM
 */
public record ZoneMap(String title, int widthPx, int heightPx, String unit, List<Zone> zones) implements Chart {
    private static final Form FORM = Form.NARROW;
    private static final double WHISKER_PER_ELLIPTICITY = 160;

    public ZoneMap {
        zones = zones.stream()
                .sorted(Comparator.comparingInt(Zone::row).reversed().thenComparingInt(Zone::column))
                .toList();
    }

    /**
     * @param row 0 to 2 from the first stored row on
     * @param fwhm NaN where the stars are too few
     * @param angleDeg of the long axis from +x towards +y
     */
    public record Zone(int row, int column, int stars, double fwhm, double ellipticity, double angleDeg) {
        boolean known() {
            return Double.isFinite(fwhm);
        }
    }

    @Override
    public String both(String id) {
        return svg(id, FORM);
    }

    @Override
    public String svg(String id, Form form) {
        FieldView view = FieldView.within(widthPx, heightPx, new Box(2, 2, FORM.width() - 2, 360), true);
        double height = Math.max(view.height(), 228);
        Box box = new Box(view.left(), view.top(), view.left() + view.width(), view.top() + height);
        Svg svg = Svg.picture(new Alternative(id, title, description()), "zones", FORM, box.bottom() + 26);
        svg.rect("frame", box.left(), box.top(), box.width(), box.height());
        for (int i = 1; i < 3; i++) {
            double x = box.left() + box.width() * i / 3;
            double y = box.top() + box.height() * i / 3;
            svg.line("hair", x, box.top(), x, box.bottom());
            svg.line("hair", box.left(), y, box.right(), y);
        }
        zones.forEach(zone -> cell(svg, view, box, zone));
        svg.text("note", Anchor.START, box.left() + 2, box.bottom() + 18, "FWHM in " + unit + ", line: ellipticity");
        return svg.end();
    }

    private void cell(Svg svg, FieldView view, Box box, Zone zone) {
        double x = box.left() + box.width() * (zone.column() + 0.5) / 3;
        double y = box.top() + box.height() * (2.5 - zone.row()) / 3;
        svg.open("g", "class", "point");
        svg.tip(words(zone));
        if (zone.known()) {
            svg.text("big", Anchor.MIDDLE, x, y - 14, Digits.fixed(zone.fwhm(), 2));
            svg.text("note", Anchor.MIDDLE, x, y + 3, against(zone));
            double length = Math.min(zone.ellipticity(), 0.6) * WHISKER_PER_ELLIPTICITY;
            svg.circle("size", x - 22, y + 19, 3);
            view.whisker(svg, "long s1", x - 22, y + 19, length, zone.angleDeg());
            svg.text("note", Anchor.START, x + 6, y + 24, Digits.fixed(zone.ellipticity(), 2));
        } else {
            svg.text("note", Anchor.MIDDLE, x, y + 5, "too few: " + zone.stars());
        }
        svg.close();
    }

    private String against(Zone zone) {
        Optional<Zone> centre = zones.stream()
                .filter(z -> z.row() == 1 && z.column() == 1 && z.known())
                .findFirst();
        if (centre.isEmpty() || centre.get() == zone) {
            return zone.stars() + " stars";
        }
        return Digits.signed((zone.fwhm() / centre.get().fwhm() - 1) * 100, 0) + " %";
    }

    private String words(Zone zone) {
        String where = List.of("bottom", "middle", "top").get(zone.row()) + " "
                + List.of("left", "centre", "right").get(zone.column());
        return zone.known()
                ? where + " FWHM " + Digits.fixed(zone.fwhm(), 2) + " " + unit + ", ellipticity "
                        + Digits.fixed(zone.ellipticity(), 2) + " from " + zone.stars() + " stars"
                : where + " too few stars (" + zone.stars() + ")";
    }

    private String description() {
        return zones.isEmpty()
                ? "No zones measured."
                : String.join("; ", zones.stream().map(this::words).toList()) + ".";
    }
}
