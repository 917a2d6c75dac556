package noctuary.draw;

import java.util.List;

/**
 * Circles and whiskers to lie over a picture of the field, in the picture's proportions. Circles are drawn larger than
 * the stars, in proportion to their FWHM.
 *
 * @param firstRowAtBottom whether the picture shows the first stored row at the bottom, as for frames of the sky
 * @param stars brightest first; the first 150 are drawn
 */
public record StarOverlay(String title, int widthPx, int heightPx, boolean firstRowAtBottom, List<StarShape> stars)
        implements Chart {
    private static final int MOST = 150;
    private static final double WIDTH = 1000;
    private static final double MEDIAN_RADIUS = 9;
    private static final double LONGEST = 0.6;

    public StarOverlay {
        stars = stars.stream().filter(StarShape::drawable).limit(MOST).toList();
    }

    @Override
    public String both(String id) {
        return svg(id, Form.WIDE);
    }

    @Override
    public String svg(String id, Form form) {
        FieldView view = new FieldView(widthPx, heightPx, 0, 0, WIDTH / widthPx, firstRowAtBottom);
        Alternative words = new Alternative(id, title, description());
        Svg svg = Svg.sheet(words, "chart overlay", view.width(), view.height(), 14);
        double median = MeanShape.of(stars).medianFwhmPx();
        for (StarShape star : stars) {
            double radius = median > 0 ? MEDIAN_RADIUS * star.fwhmPx() / median : MEDIAN_RADIUS;
            double x = view.x(star.x());
            double y = view.y(star.y());
            svg.open("g", "class", "point");
            svg.tip(star.words());
            svg.circle("size", x, y, Math.min(radius, 4 * MEDIAN_RADIUS));
            double length = Math.min(star.ellipticity(), LONGEST) * 20 * MEDIAN_RADIUS;
            view.whisker(svg, "long", x, y, length, star.angleDeg());
            svg.close();
        }
        return svg.end();
    }

    private String description() {
        if (stars.isEmpty()) {
            return "No measured stars.";
        }
        return "The " + stars.size() + " brightest measured stars, each in a circle in proportion to its FWHM. "
                + MeanShape.of(stars).sentence();
    }
}
