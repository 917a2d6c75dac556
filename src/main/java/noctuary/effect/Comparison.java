package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import noctuary.effect.Laying.Way;
import noctuary.image.Plane;
import noctuary.stars.Star;
import noctuary.stars.StarField;
import noctuary.stats.Robust;

/** The whole way of one comparison. */
final class Comparison {
    private static final Way STILL = new Way(1, 0, 0, 0, 1, 0, true);
    private static final double USUAL_FWHM_PX = 3;

    private final Side from;
    private final Side picture;
    private final boolean colourAlike;

    Comparison(Side from, Side picture) {
        this.from = from;
        this.picture = picture;
        this.colourAlike = from.planes() == picture.planes();
    }

    Effect run(Supplier<Pixels> originPixels, Supplier<Pixels> picturePixels) {
        Optional<Laying> laying = Laying.find(from, picture);
        if (laying.isEmpty()) {
            Pixels pixels = picturePixels.get();
            return Report.unlaid(
                    Ends.of(pixels), pixels.lossy(), "its stars do not fall on those of the picture it came from");
        }
        Spread spread = Spread.over(picture.width(), picture.height());
        Before before = before(originPixels.get(), laying.get(), spread);
        Looked looked = look(picturePixels.get(), before.samples(), spread);
        return new Report(from, laying.get(), looked.tiles(), fwhm(laying.get()), before.stretched())
                .of(looked.ends(), looked.lossy(), transfer -> seen(looked.main(), looked.white(), transfer));
    }

    /** What is wanted of the origin; with a white level it is a picture, stretched already. */
    private record Before(List<float[]> samples, boolean stretched) {}

    private Before before(Pixels pixels, Laying laying, Spread spread) {
        return new Before(sample(main(pixels, from), laying.way(), spread), Double.isFinite(pixels.white()));
    }

    /** What is wanted of the picture once it was looked at: the colours that are not compared may go. */
    private record Looked(List<Tile> tiles, Ends ends, List<Plane> main, double white, boolean lossy) {}

    private Looked look(Pixels pixels, List<float[]> before, Spread spread) {
        List<Plane> main = main(pixels, picture);
        return new Looked(tiles(spread, before, main, pixels), Ends.of(pixels), main, pixels.white(), pixels.lossy());
    }

    /** The planes whose mean is compared: the middle one where both have colour, else all. */
    private List<Plane> main(Pixels pixels, Side side) {
        return colourAlike && side.planes() == 3 ? List.of(pixels.planes().get(1)) : pixels.planes();
    }

    private static List<float[]> sample(List<Plane> planes, Way way, Spread spread) {
        Sampler sampler = new Sampler(planes, way);
        return spread.places().stream().map(sampler::take).toList();
    }

    private static List<Tile> tiles(Spread spread, List<float[]> before, List<Plane> main, Pixels pixels) {
        List<Tile> tiles = new ArrayList<>();
        for (int t = 0; t < before.size(); t++) {
            Spread.Place place = spread.places().get(t);
            float[][] colours = pixels.planes().size() < 3
                    ? new float[0][]
                    : pixels.planes().stream()
                            .map(plane -> shares(new Sampler(List.of(plane), STILL).take(place), pixels.white()))
                            .toArray(float[][]::new);
            float[] shown = shares(new Sampler(main, STILL).take(place), pixels.white());
            tiles.add(new Tile(place.x(), place.y(), place.width(), place.height(), before.get(t), shown, colours));
        }
        return tiles;
    }

    private static float[] shares(float[] values, double white) {
        for (int i = 0; i < values.length; i++) {
            values[i] /= (float) white;
        }
        return values;
    }

    /** Width of the stars in pixels of the picture. */
    private double fwhm(Laying laying) {
        double[] widths = from.stars().stream()
                .filter(Star::measured)
                .mapToDouble(Star::fwhmPx)
                .toArray();
        return Math.max(1.5, laying.scale() * (widths.length == 0 ? USUAL_FWHM_PX : Robust.median(widths)));
    }

    /** The stars of the whole picture with its stretch undone. */
    private static List<Star> seen(List<Plane> main, double white, Transfer transfer) {
        int width = main.get(0).width();
        int height = main.get(0).height();
        float[] linear = new float[width * height];
        IntStream.range(0, height).parallel().forEach(y -> {
            float[] row = new float[width];
            for (Plane plane : main) {
                plane.copyRow(0, y, width, row, 0);
                for (int x = 0; x < width; x++) {
                    linear[y * width + x] += row[x] / (float) (white * main.size());
                }
            }
            for (int i = y * width; i < (y + 1) * width; i++) {
                linear[i] = (float) transfer.back(linear[i]);
            }
        });
        StarField.Conditions conditions =
                new StarField.Conditions(Optional.empty(), OptionalDouble.of(transfer.back(1)));
        return StarField.measure(Plane.of(width, height, linear), conditions).stars();
    }
}
