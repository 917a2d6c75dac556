package noctuary.demo;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/** Makes the files of one planned entry and tells what they truly hold. */
final class DemoNight {
    private static final int STACK_MOMENTS = 5;
    private static final double DITHER_PX = 6;

    private final PlannedEntry entry;
    private final DemoRig rig;
    private final DemoSky sky;
    private final Pointing pointing;
    private final Path folder;
    private final List<Truth> truths = new ArrayList<>();

    private DemoNight(PlannedEntry entry, Path folder) {
        this.entry = entry;
        this.rig = DemoRig.of(entry.rig());
        this.sky = DemoSky.towards(entry.target());
        this.pointing = pointing(entry);
        this.folder = folder;
    }

    /** Writes into {@code folder} and returns the truth of each FITS file in the order written. */
    static List<Truth> write(PlannedEntry entry, Path folder) {
        DemoNight night = new DemoNight(entry, folder);
        if (entry.keepsFrames()) {
            IntStream.range(0, entry.count()).forEach(night::writeFrame);
        }
        if (entry.keepsStack()) {
            night.writeStack();
        }
        return List.copyOf(night.truths);
    }

    static Pointing pointing(PlannedEntry entry) {
        DemoRig rig = DemoRig.of(entry.rig());
        double scale = rig.arcsecPerPx() / entry.longer();
        double x = (rig.width() - 1) / 2.0 + entry.shift()[0];
        double y = (rig.height() - 1) / 2.0 + entry.shift()[1];
        return new Pointing(rig.width(), rig.height(), x, y, scale, entry.turn(), entry.mirrored());
    }

    private void writeFrame(int n) {
        Moment moment = Moment.of(entry, n);
        Random random = new Random(31L * entry.slug().hashCode() + n);
        double dx = DITHER_PX * (random.nextDouble() - 0.5);
        double dy = DITHER_PX * (random.nextDouble() - 0.5);
        Optics optics = optics(pointing.shifted(n == 0 ? 0 : dx, n == 0 ? 0 : dy));
        Passband[] bands = Passband.of(rig, entry.filter());
        Scene scene = Scene.of(entry, sky, optics, bands, List.of(moment));
        Sensor sensor = new Sensor(rig);
        Path file = folder.resolve("lights").resolve(String.format(Locale.ROOT, "%02d.fits.fz", n + 1));
        int[] counts = sensor.frame(scene, entry.seconds(), random);
        FrameWriter.write(file, new int[][] {counts}, rig.width(), Cards.ofFrame(entry, moment, entry.filter()));
        int middle = bands.length / 2;
        truths.add(Truth.of(
                entry,
                file,
                "single",
                optics,
                List.of(moment),
                sensor.noiseAdu(scene.skyRate()[middle], entry.seconds())));
    }

    private void writeStack() {
        List<Moment> moments = stackMoments();
        Optics optics = optics(pointing);
        Passband[] bands = Passband.of(rig, entry.filter());
        Scene scene = Scene.of(entry, sky, optics, bands, moments);
        Sensor sensor = new Sensor(rig);
        double scale = sensor.scale(scene, entry);
        int[][] planes = sensor.stack(
                scene, entry, bands, scale, new Random(31L * entry.slug().hashCode() - 1));
        Path file = folder.resolve("stack.fits.fz");
        FrameWriter.write(file, planes, rig.width(), Cards.ofStack(entry, moments.get(0), pointing, scale));
        for (PlannedEntry.Picture steps : entry.pictures()) {
            Picture.write(folder.resolve(steps.file()), planes, rig.width(), steps);
        }
        int middle = bands.length / 2;
        double balance = bands.length == 3 ? scale / rig.response()[middle] : scale;
        double noise = balance
                * sensor.noiseAdu(scene.skyRate()[middle], entry.seconds())
                / Math.sqrt(entry.count() * sensor.share(middle));
        truths.add(Truth.of(entry, file, "stack", optics, moments, noise));
    }

    /** The stack is the mean of the night: its first, last and some exposures between stand for all. */
    private List<Moment> stackMoments() {
        return IntStream.range(0, STACK_MOMENTS)
                .mapToObj(k -> Moment.of(entry, (int) Math.round(k * (entry.count() - 1.0) / (STACK_MOMENTS - 1))))
                .toList();
    }

    private Optics optics(Pointing at) {
        return new Optics(rig, at, rig.spacingErrorMm(entry.date()));
    }
}
