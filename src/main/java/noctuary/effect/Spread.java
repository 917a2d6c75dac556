package noctuary.effect;

import java.util.ArrayList;
import java.util.List;

/** Where the pictures are compared: everywhere on small pictures, on tiles spread evenly over large ones. */
record Spread(List<Place> places) {
    private static final long MOST_PIXELS = 6_000_000;
    private static final int SIDE = 256;

    /** A rectangle of the picture. */
    record Place(int x, int y, int width, int height) {}

    static Spread over(int width, int height) {
        return (long) width * height <= MOST_PIXELS
                ? new Spread(List.of(new Place(0, 0, width, height)))
                : new Spread(tiles(width, height));
    }

    private static List<Place> tiles(int width, int height) {
        double share = Math.sqrt((double) MOST_PIXELS / width / height);
        int across = Math.max(1, (int) (share * width / SIDE));
        int down = Math.max(1, (int) (share * height / SIDE));
        List<Place> places = new ArrayList<>();
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                int x = (int) ((column + 0.5) * width / across) - SIDE / 2;
                int y = (int) ((row + 0.5) * height / down) - SIDE / 2;
                places.add(new Place(Math.max(0, x), Math.max(0, y), Math.min(SIDE, width), Math.min(SIDE, height)));
            }
        }
        return places;
    }
}
