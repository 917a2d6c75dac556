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

    private static final int FEW_EVEN = 250;
    private static final int FEW_BRIGHT = 80;
    private static final double LARGE_BRIGHT_PART = 0.25;

    private CellChoice() {}

    /** A square of a tile; {@code height} of its highest pixel above its mean. */
    record Place(Tile tile, int x, int y, double height) {

        /** Moved so that the highest pixel is in the middle, as far as the tile allows. */
        Place centred(int side) {
            int peak = 0;
            for (int i = 1; i < side * side; i++) {
                peak = value(i, side) > value(peak, side) ? i : peak;
            }
            int left = x + peak % side - side / 2;
            int top = y + peak / side - side / 2;
            return new Place(
                    tile,
                    Math.max(0, Math.min(tile.width() - side, left)),
                    Math.max(0, Math.min(tile.height() - side, top)),
                    height);
        }

        private float value(int i, int side) {
            return tile.origin()[(y + i / side) * tile.width() + x + i % side];
        }

        private static Place of(Tile tile, int x, int y, int side) {
            Place place = new Place(tile, x, y, 0);
            double sum = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < side * side; i++) {
                sum += place.value(i, side);
                most = Math.max(most, place.value(i, side));
            }
            return new Place(tile, x, y, Double.isNaN(sum) ? 0 : most - sum / (side * side));
        }
    }

    static List<Place> of(List<Tile> tiles, int side) {
        List<Place> all = all(tiles, side);
        List<Place> bright = bright(all, BRIGHT_PART, BRIGHT);
        List<Place> chosen = new ArrayList<>(bright);
        chosen.addAll(even(all, bright, EVEN));
        return chosen;
    }

    /** Fewer and larger ones for their pixels, with the light in their middle. */
    static List<Place> centred(List<Tile> tiles, int side) {
        List<Place> all = all(tiles, side);
        List<Place> bright = bright(all, LARGE_BRIGHT_PART, FEW_BRIGHT);
        List<Place> chosen = new ArrayList<>(even(all, bright, FEW_EVEN));
        bright.forEach(place -> chosen.add(place.centred(side)));
        return chosen;
    }

    /** Those with the most light in them, moved so that it is in their middle. */
    static List<Place> stars(List<Tile> tiles, int side) {
        return bright(all(tiles, side), LARGE_BRIGHT_PART, FEW_BRIGHT).stream()
                .map(place -> place.centred(side))
                .toList();
    }

    /** The highest pixels of those with the most light in them. */
    static double[] peaks(List<Tile> tiles, int side) {
        return stars(tiles, side).stream()
                .mapToDouble(place -> place.value(side * side / 2 + side / 2, side))
                .toArray();
    }

    private static List<Place> all(List<Tile> tiles, int side) {
        List<Place> all = new ArrayList<>();
        for (Tile tile : tiles) {
            for (int y = 0; y + side <= tile.height(); y += side) {
                for (int x = 0; x + side <= tile.width(); x += side) {
                    all.add(Place.of(tile, x, y, side));
                }
            }
        }
        return all;
    }

    private static List<Place> bright(List<Place> all, double part, int most) {
        List<Place> byHeight = all.stream()
                .sorted(Comparator.comparingDouble(Place::height).reversed())
                .toList();
        return every(byHeight.subList(0, (int) Math.min(all.size(), Math.ceil(part * all.size()))), most);
    }

    private static List<Place> even(List<Place> all, List<Place> taken, int most) {
        Set<Place> gone = Collections.newSetFromMap(new IdentityHashMap<>());
        gone.addAll(taken);
        return every(all.stream().filter(place -> !gone.contains(place)).toList(), most);
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
}
