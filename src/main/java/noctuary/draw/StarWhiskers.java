package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Star shapes over the field as whiskers: a line along each star's long axis, its length the ellipticity, in a circle
 * as large as the FWHM. Both scales are the same for every field, so that two charts can be compared. The first row of
 * the frame is at the bottom.
 *
 * @param stars brightest first; only as many as stay legible are drawn
 */
public record StarWhiskers(String title, int widthPx, int heightPx, List<StarShape> stars) implements Chart {
    private static final double CIRCLE_PER_FWHM_PX = 1.1;
    private static final double WHISKER_PER_ELLIPTICITY = 150;
    private static final double LONGEST = 0.6;

    public StarWhiskers {
        stars = stars.stream().filter(StarShape::drawable).toList();
    }

    @Override
    public String svg(String id, Form form) {
        double side = form.pick(40, 14);
        Box room = new Box(side, 14, form.width() - side, 14 + form.pick(460, 340));
        FieldView view = FieldView.within(widthPx, heightPx, room, true);
        int shown = (int) Math.min(stars.size(), form.pick(300, 130));
        Svg svg = Svg.picture(
                new Alternative(id, title, description()), "whiskers", form, view.top() + view.height() + 58);
        view.frame(svg);
        double zoom = form.pick(1, 0.72);
        for (StarShape star : stars.subList(0, shown)) {
            svg.open("g", "class", "point");
            svg.tip(star.words());
            shape(svg, view, view.x(star.x()), view.y(star.y()), star, zoom);
            svg.close();
        }
        if (stars.isEmpty()) {
            Axes.nothing(svg, form, view.top() + view.height() / 2, "no measured stars");
        }
        key(svg, form, view, zoom, shown);
        return svg.end();
    }

    private static void shape(Svg svg, FieldView view, double x, double y, StarShape star, double zoom) {
        svg.circle("size", x, y, Math.max(1, star.fwhmPx() * CIRCLE_PER_FWHM_PX * zoom));
        double length = Math.min(star.ellipticity(), LONGEST) * WHISKER_PER_ELLIPTICITY * zoom;
        view.whisker(svg, "long s1", x, y, length, star.angleDeg());
    }

    private void key(Svg svg, Form form, FieldView view, double zoom, int shown) {
        double y = view.top() + view.height() + 20;
        double left = view.left() + 4;
        StarShape sample = new StarShape(0, 0, 4, 0.2, 0);
        shape(svg, view, left + 18, y, sample, zoom);
        svg.text("label", Anchor.START, left + 44, y + 5, "FWHM 4 px, ellipticity 0.2");
        List<String> notes = new ArrayList<>();
        notes.add(Digits.fixed(widthPx, 0) + " × " + Digits.fixed(heightPx, 0) + " px");
        notes.add(
                shown < stars.size()
                        ? shown + " brightest of " + Digits.fixed(stars.size(), 0) + " stars"
                        : shown + " stars");
        svg.text("note", Anchor.START, left, y + 27, String.join(", ", notes));
    }

    private String description() {
        if (stars.isEmpty()) {
            return "No measured stars.";
        }
        return Digits.fixed(stars.size(), 0) + " stars. " + MeanShape.of(stars).sentence()
                + " First row of the frame at the bottom.";
    }
}
