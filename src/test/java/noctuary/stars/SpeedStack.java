package noctuary.stars;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.image.Plane;

/** Writes a file of three planes of floats as a stack would hold them: a frame's pixels, at three levels of light. */
final class SpeedStack {
    private static final double[] LIGHT = {0.8, 1, 1.3};

    private SpeedStack() {}

    static void write(Path frame, Path stack) throws IOException, UnreadableException {
        Plane plane = FitsFile.read(frame).planes().get(0);
        try (DataOutputStream out =
                new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(stack), 1 << 20))) {
            out.write(header(plane).getBytes(StandardCharsets.US_ASCII));
            float[] row = new float[plane.width()];
            for (double light : LIGHT) {
                for (int y = 0; y < plane.height(); y++) {
                    plane.copyRow(0, y, row.length, row, 0);
                    for (float value : row) {
                        out.writeFloat((float) (light * value / 65535));
                    }
                }
            }
            out.write(new byte[2880 - out.size() % 2880]);
        }
    }

    private static String header(Plane plane) {
        StringBuilder header = new StringBuilder();
        String[] cards = {
            "SIMPLE  = T",
            "BITPIX  = -32",
            "NAXIS   = 3",
            "NAXIS1  = " + plane.width(),
            "NAXIS2  = " + plane.height(),
            "NAXIS3  = 3",
            "END"
        };
        for (String card : cards) {
            header.append(String.format(Locale.ROOT, "%-80s", card));
        }
        return String.format(Locale.ROOT, "%-2880s", header);
    }
}
