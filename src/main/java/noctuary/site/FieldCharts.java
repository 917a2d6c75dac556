package noctuary.site;

import java.util.List;
import noctuary.draw.StarOverlay;
import noctuary.draw.StarShape;
import noctuary.draw.StarWhiskers;
import noctuary.draw.ZoneMap;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.site.page.Drawing;
import noctuary.site.page.Markup;
import noctuary.stars.Star;

/** Star shapes over the field of one file. A chart with nothing to show is null. */
final class FieldCharts {
    private final FrameReport report;
    private final List<StarShape> stars;

    FieldCharts(FrameSheet shown) {
        this.report = shown.report();
        this.stars = shown.stars().stream()
                .filter(Star::measured)
                .map(s -> new StarShape(s.x(), s.y(), s.fwhmPx(), s.ellipticity(), s.angleDeg()))
                .toList();
    }

    /** One whisker a star. */
    Drawing whiskers() {
        return stars.isEmpty() || !sized()
                ? null
                : Charts.drawing(
                        new StarWhiskers("Star shapes across the field", width(), height(), stars),
                        "shapes",
                        "Lines lie along the long axes, their length the ellipticity; circles show the width.");
    }

    /** The nine zones. */
    Drawing zones() {
        if (report.zones().isEmpty() || !sized()) {
            return null;
        }
        List<ZoneMap.Zone> zones = report.zones().stream()
                .map(z -> new ZoneMap.Zone(
                        z.row(),
                        z.column(),
                        z.stars(),
                        z.fwhmPx().orElse(Double.NaN),
                        z.ellipticity().orElse(Double.NaN),
                        z.angleDeg().orElse(Double.NaN)))
                .toList();
        return Charts.drawing(
                new ZoneMap("The nine zones of the field", width(), height(), "px", zones),
                "zones",
                "Star width by zone, and how far it is from the middle’s.");
    }

    /** Measured stars over the picture of the file they were found on; empty without any. */
    Markup overlay(String id) {
        return stars.isEmpty() || !sized()
                ? Markup.NONE
                : new Markup(new StarOverlay("Measured stars", width(), height(), true, stars).both(id));
    }

    private boolean sized() {
        return report.width().isPresent() && report.height().isPresent();
    }

    private int width() {
        return report.width().orElseThrow();
    }

    private int height() {
        return report.height().orElseThrow();
    }
}
