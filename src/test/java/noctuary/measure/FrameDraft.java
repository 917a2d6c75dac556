package noctuary.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import noctuary.image.Plane;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/** A small 16-bit FITS file in the making: mandatory cards, cards of the test's choice, simulated stars. */
public final class FrameDraft {
    private final List<String> cards = new ArrayList<>();
    private final Plane plane;

    private FrameDraft(Plane plane) {
        this.plane = plane;
    }

    /** 200 x 150 pixels with 40 round stars of the given width. */
    public static FrameDraft stars(double fwhmPx, long seed) {
        SkySimulator sky = new SkySimulator(200, 150, seed)
                .shape(StarShape.constant(fwhmPx, 0, 0, 3.5))
                .stars(40, 30, 300, 14);
        return new FrameDraft(sky.frame().plane());
    }

    /** A simulated frame as it is. */
    public static FrameDraft of(Plane plane) {
        return new FrameDraft(plane);
    }

    /** Sky noise only, of the given size. */
    public static FrameDraft empty(int width, int height, long seed) {
        return new FrameDraft(new SkySimulator(width, height, seed).frame().plane());
    }

    /** Adds a card; {@code value} as it stands in the file, strings in single quotes. */
    public FrameDraft card(String keyword, String value) {
        StringBuilder card = new StringBuilder(keyword);
        card.append(" ".repeat(8 - keyword.length())).append("= ").append(value);
        cards.add(card.toString());
        return this;
    }

    public Path write(Path file) {
        try {
            Files.createDirectories(file.getParent());
            FitsBytes.write(plane, cards, file);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
