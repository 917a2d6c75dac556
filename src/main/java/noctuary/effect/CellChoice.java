package noctuary.effect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Which squares tell the stretch: some evenly over the field, and some of those with the most light in them. */
final class CellChoice {
    private static final int EVEN = 500;
    private static final int BRIGHT = 100;
    /** The brightest come from so large a part of all. */
    private static final double BRIGHT_PART = 0.05;

    private CellChoice() {}

    /** A square of a tile; {@code height} of its highest pixel above its mean. */
    record Place(Tile tile, int x, int y, double height) {}

    static List<Place> of(List<Tile> tiles, int side) {
        List<Place> all = new ArrayList<>();
        for (Tile tile : tiles) {
            for (int y = 0; y + side <= tile.height(); y += side) {
                for (int x = 0; x + side <= tile.width(); x += side) {
                    all.add(new Place(tile, x, y, height(tile, x, y, side)));
                }
            }
        }
        List<Place> byHeight = all.stream()
                .sorted(Comparator.comparingDouble(Place::height).reversed())
                .toList();
        int bright = (int) Math.min(byHeight.size(), Math.ceil(BRIGHT_PART * byHeight.size()));
        List<Place> chosen = new ArrayList<>(every(byHeight.subList(0, bright), BRIGHT));
        Set<Place> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        taken.addAll(chosen);
        chosen.addAll(every(all.stream().filter(place -> !taken.contains(place)).toList(), EVEN));
        return chosen;
    }

    /** At most {@code most}, evenly spaced. */
    private static List<Place> every(List<Place> places, int most) {
        int take = Math.min(most, places.size());
        List<Place> some = new ArrayList<>();
        for (int k = 0; k < take; k++) {
            some.add(places.get((int) ((long) k * places.size() / take)));
        }
        return some;
    }

    private static double height(Tile tile, int left, int top, int side) {
        double sum = 0;
        double most = 0;
        for (int i = 0; i < side * side; i++) {
            float value = tile.origin()[(top + i / side) * tile.width() + left + i % side];
            if (Float.isNaN(value)) {
                return 0;
            }
            sum += value;
            most = i == 0 ? value : Math.max(most, value);
        }
        return most - sum / (side * side);
    }
}
