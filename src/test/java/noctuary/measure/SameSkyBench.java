package noctuary.measure;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import noctuary.image.Affine;
import noctuary.image.Plane;
import noctuary.image.Regrid;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;

/**
 * Four attempts of 26 megapixels, turned and scaled, brought onto the grid of the first: stars found, matched, pixels
 * resampled; against {@code scipy.ndimage.affine_transform} of order 3 for the resampling alone of the same pixels with
 * the same maps ({@code src/test/python/same_sky_reference.py}, run by {@code /usr/bin/python3} with Debian's
 * python3-scipy). Run with {@code -Xmx1536m}. Prints seconds and ratios of each round. The argument is a folder with
 * 450 MB to spare.
 */
public final class SameSkyBench {
    private static final int WIDTH = 6248;
    private static final int HEIGHT = 4176;
    private static final int ROUNDS = 3;
    private static final double[][] TURNS = {{0, 1}, {3, 0.98}, {-24, 1.05}, {178, 1}};

    private SameSkyBench() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Path.of(args[0]);
        List<Plane> planes = new ArrayList<>();
        for (int i = 0; i < TURNS.length; i++) {
            planes.add(frame(i));
            write(planes.get(i), folder.resolve("attempt-" + i + ".raw"));
        }
        for (int round = 1; round <= ROUNDS; round++) {
            long start = System.nanoTime();
            List<Affine> maps = new ArrayList<>();
            Measurement reference = measured(planes.get(0));
            for (Plane plane : planes) {
                SkyMatch match = plane == planes.get(0)
                        ? SkyMatch.itself(reference)
                        : SkyMatch.of(measured(plane), reference).orElseThrow();
                maps.add(match.toReference().inverse());
            }
            long matched = System.nanoTime();
            double sum = 0;
            for (int i = 0; i < planes.size(); i++) {
                sum += Regrid.onto(planes.get(i), maps.get(i), WIDTH, HEIGHT).at(WIDTH / 2, HEIGHT / 2);
            }
            double aligning = (matched - start) * 1e-9;
            double resampling = (System.nanoTime() - matched) * 1e-9;
            double scipy = scipy(folder, maps);
            System.out.printf(
                    Locale.ROOT,
                    "round %d: aligned in %.2f s, resampled in %.2f s, together %.2f s; scipy's resampling %.2f s;"
                            + " ratio %.2f (at most 1); heap %d MB; %.0f%n",
                    round,
                    aligning,
                    resampling,
                    aligning + resampling,
                    scipy,
                    (aligning + resampling) / scipy,
                    Runtime.getRuntime().maxMemory() >> 20,
                    sum);
        }
    }

    private static Measurement measured(Plane plane) {
        return Meter.of(
                FrameReport.Kind.STACK,
                List.of(plane),
                noctuary.stars.StarField.Conditions.PLAIN,
                java.util.Optional.empty(),
                "",
                new ArrayList<>());
    }

    private static Plane frame(int i) {
        double c = TURNS[i][1] * Math.cos(Math.toRadians(TURNS[i][0]));
        double s = TURNS[i][1] * Math.sin(Math.toRadians(TURNS[i][0]));
        Affine map = new Affine(c, -s, WIDTH / 2.0, s, c, HEIGHT / 2.0)
                .after(Affine.shift(-WIDTH / 2.0 + 11, -HEIGHT / 2.0 - 7));
        SkySimulator sky = new SkySimulator(WIDTH, HEIGHT, 900 + i).shape(StarShape.constant(3, 0.05, 20, 3.5));
        Random random = new Random(5);
        for (int n = 0; n < 3000; n++) {
            double x = WIDTH * random.nextDouble();
            double y = HEIGHT * random.nextDouble();
            sky.light(map.x(x, y), map.y(x, y), 1500 * Math.exp(5 * random.nextDouble()));
        }
        return sky.frame().plane();
    }

    private static void write(Plane plane, Path file) throws IOException {
        ByteBuffer row = ByteBuffer.allocate(4 * WIDTH).order(ByteOrder.LITTLE_ENDIAN);
        float[] values = new float[WIDTH];
        try (FileChannel out = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            for (int y = 0; y < HEIGHT; y++) {
                plane.copyRow(0, y, WIDTH, values, 0);
                row.clear();
                row.asFloatBuffer().put(values);
                out.write(row);
            }
        }
    }

    /** Seconds of the resampling, as the script measures them, without its start and its reading. */
    private static double scipy(Path folder, List<Affine> maps) throws IOException, InterruptedException {
        StringBuilder text = new StringBuilder();
        for (Affine m : maps) {
            text.append(String.format(
                    Locale.ROOT,
                    "%.12g %.12g %.12g %.12g %.12g %.12g%n",
                    m.xx(),
                    m.xy(),
                    m.x0(),
                    m.yx(),
                    m.yy(),
                    m.y0()));
        }
        Files.writeString(folder.resolve("maps.txt"), text);
        Process process = new ProcessBuilder(
                        "/usr/bin/python3",
                        "src/test/python/same_sky_reference.py",
                        folder.toString(),
                        Integer.toString(WIDTH),
                        Integer.toString(HEIGHT))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        process.waitFor();
        return Double.parseDouble(out.strip());
    }
}
