package noctuary.draw;

import java.util.List;

/** The names of the series with a sample of each, in as many lines as they need. */
final class Key {
    private static final double LINE = 19;
    private static final double SAMPLE = 20;
    private static final double GAP = 18;

    /** Draws the sample of a series around a point. */
    interface Sample {
        void draw(Svg svg, double x, double y);
    }

    record Item(String text, Sample sample) {}

    private final List<Item> items;
    private final Form form;

    Key(List<Item> items, Form form) {
        this.items = List.copyOf(items);
        this.form = form;
    }

    double height() {
        return place(null, 0, 0);
    }

    void draw(Svg svg, double left, double top) {
        place(svg, left, top);
    }

    private double place(Svg svg, double left, double top) {
        double room = form.width() - left - SAMPLE - 4;
        double x = left;
        double y = top;
        for (Item item : items) {
            String text = Words.within(item.text(), room, form.fontSize());
            double width = SAMPLE + Words.width(text, form.fontSize()) + GAP;
            if (x > left && x + width - GAP > form.width() - 4) {
                x = left;
                y += LINE;
            }
            if (svg != null) {
                item.sample().draw(svg, x + 7, y + 9);
                svg.text("label", Anchor.START, x + SAMPLE, y + 14, text);
            }
            x += width;
        }
        return items.isEmpty() ? 0 : y - top + LINE;
    }
}
