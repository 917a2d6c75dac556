package noctuary.measure;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import noctuary.image.Plane;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/** A small 16-bit FITS file in the making: mandatory cards, cards of the test's choice, simulated stars. */
public final class FrameDraft {
    private static final int BLOCK = 2880;

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
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            header(bytes);
            for (int y = 0; y < plane.height(); y++) {
                for (int x = 0; x < plane.width(); x++) {
                    int stored = Math.round(plane.at(x, y)) - 32768;
                    bytes.write(stored >> 8);
                    bytes.write(stored);
                }
            }
            bytes.write(new byte[(BLOCK - bytes.size() % BLOCK) % BLOCK]);
            return Files.write(file, bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void header(ByteArrayOutputStream bytes) throws IOException {
        List<String> all = new ArrayList<>(List.of(
                "SIMPLE  =                    T",
                "BITPIX  =                   16",
                "NAXIS   =                    2",
                "NAXIS1  = " + " ".repeat(20 - Integer.toString(plane.width()).length()) + plane.width(),
                "NAXIS2  = " + " ".repeat(20 - Integer.toString(plane.height()).length()) + plane.height(),
                "BZERO   =                32768",
                "BSCALE  =                    1"));
        all.addAll(cards);
        all.add("END");
        for (String card : all) {
            bytes.write((card + " ".repeat(80 - card.length())).getBytes(StandardCharsets.US_ASCII));
        }
        while (bytes.size() % BLOCK != 0) {
            bytes.write(' ');
        }
    }
}
