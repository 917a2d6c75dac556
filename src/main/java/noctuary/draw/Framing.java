package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Fields of view about a target's size, to one scale.
 *
 * @param target its name
 * @param majorArcmin the longer axis of the target; NaN when not known
 * @param minorArcmin the shorter axis; NaN for a round target
 * @param series names in the order that keeps their look on every page; may be empty
 */
public record Framing(
        String title, String target, double majorArcmin, double minorArcmin, List<String> series, List<Field> fields)
        implements Chart {
    private static final Form FORM = Form.NARROW;

    public Framing {
        series = List.copyOf(series);
        fields = fields.stream()
                .filter(f -> Digits.isPositive(f.widthArcmin()) && Digits.isPositive(f.heightArcmin()))
                .toList();
    }

    public record Field(String name, double widthArcmin, double heightArcmin) {
        private String words() {
            return name + " " + Digits.significant(widthArcmin, 3) + "′ × " + Digits.significant(heightArcmin, 3) + "′";
        }
    }

    @Override
    public String both(String id) {
        return svg(id, FORM);
    }

    @Override
    public String svg(String id, Form form) {
        double major = Digits.isPositive(majorArcmin) ? majorArcmin : 0;
        double minor = Digits.isPositive(minorArcmin) ? minorArcmin : major;
        double wide = fields.stream().mapToDouble(Field::widthArcmin).reduce(Math.max(major, 1), Math::max);
        double high = fields.stream().mapToDouble(Field::heightArcmin).reduce(Math.max(minor, 1), Math::max);
        double scale = Math.min((FORM.width() - 12) / wide, 280 / high);
        double middle = 6 + high * scale / 2;
        var looks = Look.of(series, fields.stream().map(Field::name).toList());
        Key key = new Key(keyItems(looks), FORM);
        double bottom = 2 * middle + 30;
        Svg svg = Svg.picture(
                new Alternative(id, title, description(major, minor)), "framing", FORM, bottom + key.height());
        if (major > 0) {
            double x = FORM.width() / 2;
            svg.leaf(
                    "ellipse",
                    "class",
                    "target",
                    "cx",
                    x,
                    "cy",
                    middle,
                    "rx",
                    major * scale / 2,
                    "ry",
                    minor * scale / 2);
            svg.text("label halo", Anchor.MIDDLE, x, middle + 5, Words.within(target, 200, FORM.fontSize()));
        }
        for (Field field : fields) {
            double width = field.widthArcmin() * scale;
            double height = field.heightArcmin() * scale;
            Look look = looks.get(field.name());
            svg.open("g", "class", "point");
            svg.tip(field.words());
            String classes = "outline " + look.colour() + " " + look.dash();
            svg.rect(classes, (FORM.width() - width) / 2, middle - height / 2, width, height);
            svg.close();
        }
        ruler(svg, scale, wide, 2 * middle + 10);
        key.draw(svg, 4, bottom);
        return svg.end();
    }

    private List<Key.Item> keyItems(Map<String, Look> looks) {
        List<Key.Item> items = new ArrayList<>();
        for (Field field : fields) {
            Look look = looks.get(field.name());
            String classes = "outline " + look.colour() + " " + look.dash();
            items.add(new Key.Item(field.words(), (svg, x, y) -> svg.rect(classes, x - 7, y - 5, 15, 10)));
        }
        return items;
    }

    private static void ruler(Svg svg, double scale, double wide, double y) {
        Ticks ticks = Ticks.fromZero(wide / 4, 2);
        double length = ticks.high() * scale;
        svg.line("axis", 8, y, 8 + length, y);
        svg.line("axis", 8, y - 3, 8, y + 3);
        svg.line("axis", 8 + length, y - 3, 8 + length, y + 3);
        svg.text("note", Anchor.START, 16 + length, y + 4, ticks.label(ticks.high()) + "′");
    }

    private String description(double major, double minor) {
        List<String> parts = new ArrayList<>(fields.stream().map(Field::words).toList());
        parts.add(
                major > 0
                        ? target + " spans " + Digits.significant(major, 3) + "′ × " + Digits.significant(minor, 3)
                                + "′"
                        : "the size of " + target + " is not known");
        return "Fields of view in arcminutes: " + String.join("; ", parts) + ".";
    }
}
