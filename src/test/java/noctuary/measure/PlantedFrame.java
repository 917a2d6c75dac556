package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import noctuary.fits.Card;
import noctuary.fits.FrameHeader;
import noctuary.noise.Defects;
import noctuary.noise.Shading;
import noctuary.stars.Background;
import noctuary.stars.FieldModel;
import noctuary.stars.Star;
import noctuary.stars.StarField;
import noctuary.stars.Summary;
import noctuary.stars.Zone;

/** A measurement as a frame of 291 by 220 pixels would have given it, with stars that two frames of a target share. */
public final class PlantedFrame {
    public static final int WIDTH = 291;
    public static final int HEIGHT = 220;
    private static final int STARS = 24;

    private final List<Card> cards = new ArrayList<>();
    private final Random random;
    private final double fwhmPx;

    public PlantedFrame(long seed, double fwhmPx) {
        this.random = new Random(seed);
        this.fwhmPx = fwhmPx;
    }

    public PlantedFrame card(String keyword, Object value) {
        cards.add(new Card(keyword, value.toString(), "", value instanceof String));
        return this;
    }

    /** @param target stars of one number lie at the same places but for a shift of the whole */
    public Measurement measured(int target) {
        StarField field = field(target);
        return new Measurement(
                FrameReport.Kind.SINGLE,
                WIDTH,
                HEIGHT,
                List.of(new Measurement.PlaneSummary(field.background(), field.fwhmPx())),
                Optional.of(FrameHeader.of(cards, WIDTH, HEIGHT)),
                Optional.of(field),
                Optional.empty(),
                Optional.of(defects()),
                Long.toHexString(random.nextLong()) + Long.toHexString(random.nextLong()),
                List.of());
    }

    private StarField field(int target) {
        Random sky = new Random(target);
        double shiftX = 3 * random.nextGaussian();
        double shiftY = 3 * random.nextGaussian();
        double clear = 1 - 0.1 * random.nextDouble();
        List<Star> stars = new ArrayList<>();
        for (int i = 0; i < STARS; i++) {
            double x = 10 + (WIDTH - 20) * sky.nextDouble() + shiftX;
            double y = 10 + (HEIGHT - 20) * sky.nextDouble() + shiftY;
            double flux = 400_000 / (1.0 + i) * (0.5 + sky.nextDouble());
            stars.add(star(x, y, flux * clear));
        }
        stars.sort((a, b) -> Double.compare(b.flux(), a.flux()));
        double level = 900 + 40 * random.nextGaussian();
        return new StarField(
                new Background(level, 21 + random.nextGaussian(), 6 + random.nextGaussian()),
                stars,
                0,
                Optional.of(summary(fwhmPx)),
                Optional.of(summary(0.07)),
                Optional.of(summary(0.6 * fwhmPx)),
                OptionalDouble.of(3 + 0.1 * random.nextGaussian()),
                zones(),
                Optional.of(model()),
                Optional.empty());
    }

    private Star star(double x, double y, double flux) {
        double noise = 1 + 0.03 * random.nextGaussian();
        Set<Star.Flag> flags = flux < 3000 ? Set.of(Star.Flag.FAINT) : Set.of();
        return new Star(
                x + 0.05 * random.nextGaussian(),
                y + 0.05 * random.nextGaussian(),
                flux * noise,
                fwhmPx * (1 + 0.02 * random.nextGaussian()),
                0.07 + 0.01 * random.nextDouble(),
                20 + 8 * random.nextGaussian(),
                0.6 * fwhmPx,
                flux / 60,
                flux / 12,
                flags);
    }

    private Summary summary(double middle) {
        return new Summary(middle, middle * 0.95, middle * 1.06, middle * 0.004);
    }

    private List<Zone> zones() {
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double width = fwhmPx * (1 + 0.02 * random.nextGaussian() + (i == 4 ? 0 : 0.05));
            zones.add(new Zone(
                    i / 3, i % 3, 11, OptionalDouble.of(width), OptionalDouble.of(0.07), OptionalDouble.of(20)));
        }
        return zones;
    }

    private FieldModel model() {
        double corner = 0.05 * fwhmPx;
        return new FieldModel(90, fwhmPx, 0.02, corner, 0.02, 0.1, 0.03, 40, corner, 0.03, 0, 0.03, Double.NaN, 0.05);
    }

    private Defects defects() {
        OptionalDouble none = OptionalDouble.of(0);
        return new Defects(
                OptionalDouble.of(random.nextInt(40)),
                OptionalDouble.of(0.2),
                OptionalDouble.of(0.1),
                none,
                none,
                OptionalDouble.of(0.01),
                OptionalDouble.of(random.nextInt(20)),
                OptionalDouble.empty(),
                Optional.of(new Shading(Optional.empty(), Optional.empty(), Optional.empty())));
    }
}
