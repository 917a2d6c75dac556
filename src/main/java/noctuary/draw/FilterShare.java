package noctuary.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How the exposure divides among the filters: one bar, its parts named below it.
 *
 * @param order filter names in the order that keeps their look on every page; may be empty
 */
public record FilterShare(String title, List<String> order, List<Share> shares) implements Chart {
    private static final double BAR = 22;

    public FilterShare {
        order = List.copyOf(order);
        shares = shares.stream()
                .filter(s -> Digits.isPositive(s.seconds()))
                .sorted(Comparator.comparingDouble(Share::seconds).reversed())
                .toList();
    }

    public record Share(String filter, double seconds) {
        private String words(double total) {
            return filter + " " + Digits.hours(seconds / 3600) + " (" + Digits.fixed(100 * seconds / total, 0) + " %)";
        }
    }

    @Override
    public String svg(String id, Form form) {
        double total = shares.stream().mapToDouble(Share::seconds).sum();
        var looks = Look.of(order, shares.stream().map(Share::filter).toList());
        List<Key.Item> items = new ArrayList<>();
        shares.forEach(share -> items.add(new Key.Item(
                share.words(total), (svg, x, y) -> looks.get(share.filter()).bar(svg, x - 6, y - 6, 12, 12))));
        Key key = new Key(items, form);
        Svg svg = Svg.picture(new Alternative(id, title, description(total)), "share", form, BAR + 12 + key.height());
        svg.open("defs");
        looks.values().forEach(look -> look.texture(svg));
        svg.close();
        if (shares.isEmpty()) {
            Axes.nothing(svg, form, 20, "no exposure yet");
            return svg.end();
        }
        Scale x = new Scale(0, total, 4, form.width() - 4);
        double before = 0;
        for (Share share : shares) {
            svg.open("g", "class", "point");
            svg.tip(share.words(total));
            looks.get(share.filter()).bar(svg, x.at(before), 2, x.length(share.seconds()), BAR);
            svg.close();
            before += share.seconds();
        }
        key.draw(svg, 4, BAR + 10);
        return svg.end();
    }

    private String description(double total) {
        return shares.isEmpty()
                ? "No exposure yet."
                : "In all " + Digits.hours(total / 3600) + ": "
                        + String.join(
                                ", ", shares.stream().map(s -> s.words(total)).toList()) + ".";
    }
}
