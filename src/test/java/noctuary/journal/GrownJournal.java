package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import noctuary.measure.PlantedCache;
import noctuary.measure.PlantedFrame;

/**
 * A journal of many years: notes, 20 rigs, 4 sites, 60 targets and forty frame records an entry, of which one is the
 * stack. Frames are files of a line, stacks are black; their measurements and previews are planted in the cache.
 */
final class GrownJournal {
    static final int FRAMES = 40;

    private static final int RIGS = 20;
    private static final int TARGETS = 60;
    private static final List<String> SITES = List.of("terrace", "meadow", "pass", "quarry");
    private static final LocalDate FIRST = LocalDate.of(2016, 1, 3);

    private final Path root;
    private final int entries;
    private final PlantedCache cache;
    private final Random random = new Random(7);

    private GrownJournal(Path root, int entries) {
        this.root = root;
        this.entries = entries;
        this.cache = new PlantedCache(root.resolve(".noctuary"));
    }

    static void write(Path root, int entries) throws IOException {
        GrownJournal journal = new GrownJournal(root, entries);
        journal.file("journal.yaml", "title: Ten years of nights\nkeeper: K.\nsite: terrace\nrig: rig-0\n");
        for (int i = 0; i < RIGS; i++) {
            journal.rig(i);
        }
        for (String site : SITES) {
            journal.file("sites/" + site + ".md", """
                    ---
                    name: The %s
                    latitude: 44.%d deg
                    longitude: 9.2 deg
                    elevation: 100 m
                    time zone: Europe/Rome
                    ---
                    """.formatted(site, SITES.indexOf(site) + 1));
        }
        for (int i = 0; i < entries; i++) {
            journal.entry(i);
        }
        journal.cache.save();
    }

    static Path note(Path root, int entry) {
        return root.resolve("entries").resolve(slug(entry)).resolve("entry.md");
    }

    private static String slug(int i) {
        return "e%04d-night".formatted(i);
    }

    private void rig(int i) throws IOException {
        file("rigs/rig-" + i + ".md", """
                ---
                name: Rig %d
                optics: {aperture: %d mm, focal length: %d mm, back focus: 55 mm, image circle: 30 mm}
                camera: {pixel: 3.8 µm, width: 291, height: 220, read noise: 1.6 e, gain: 0.4 e/ADU, full well: 20000 e}
                train:
                  - {part: corrector, rear: M48x0.75 male}
                  - {part: spacer, length: 37.5 mm, front: M48x0.75 female, rear: M42x0.75 male}
                  - {part: camera, length: 17.5 mm, front: M42x0.75 female}
                mount: {name: the grey one, capacity: 20 kg}
                payload: [{part: tube, mass: %d.1 kg}, {part: camera, mass: 0.7 kg}]
                cost: [{part: tube, price: %d EUR}]
                ---
                A rig among others.
                """.formatted(
                        i, 80 + 10 * (i % 8), 400 + 50 * (i % 12), 3 + i % 9, 300 + 40 * i));
    }

    private void entry(int i) throws IOException {
        LocalDate night = FIRST.plusDays(3650L * i / entries);
        int rig = Math.min(RIGS - 1, RIGS * i / entries + random.nextInt(2));
        int target = random.nextInt(TARGETS);
        String lesson = i % 10 == 3 ? "lessons: [{about: focus, do: refocus after every 3 degrees}]\n" : "";
        String change = i % 100 == 50 ? "changes: [a new dew band round the tube]\n" : "";
        String lost = i % 4 == 1 ? "lost: [{minutes: 45, cause: cloud, note: from the west}]\n" : "";
        file(slug(i) + "/entry.md", """
                ---
                title: Night number %d
                target: T %d
                rig: rig-%d
                site: %s
                frames: ['lights/*.fits']
                stack: stack.fits
                guiding: {rms: 0.%d arcsec}
                %s%s%sversions: [{name: plain, from: stack, steps: [stretch: asinh 12, noise reduction: 0.3]}]
                ---
                The %d. night. Clear until midnight, then *haze*; the tube wanted its refocus at eleven.

                - dew by one o'clock
                - see the [night before](../%s/entry.md)
                """.formatted(
                        i,
                        target,
                        rig,
                        SITES.get(random.nextInt(4)),
                        50 + random.nextInt(50),
                        lesson,
                        change,
                        lost,
                        i,
                        slug(Math.max(0, i - 1))));
        frames(i, night, rig, target);
    }

    private void frames(int i, LocalDate night, int rig, int target) throws IOException {
        Path folder = root.resolve("entries").resolve(slug(i));
        Instant start = night.atTime(20, 30).toInstant(ZoneOffset.UTC);
        double seeing = 2.5 + random.nextGaussian() * 0.3;
        for (int f = 0; f < FRAMES; f++) {
            boolean stack = f == FRAMES - 1;
            PlantedFrame frame = new PlantedFrame(random.nextLong(), seeing * (1 + 0.03 * random.nextGaussian()))
                    .card("OBJECT", "T " + target)
                    .card("DATE-OBS", start.plusSeconds(310L * f).toString().replace("Z", ""))
                    .card("EXPTIME", stack ? 300.0 * (FRAMES - 1) : 300.0)
                    .card("FILTER", "L")
                    .card("CCD-TEMP", -10 - random.nextInt(3) * 0.1)
                    .card("XPIXSZ", 3.8)
                    .card("FOCALLEN", 400.0 + 50 * (rig % 12))
                    .card("EGAIN", 0.4)
                    .card("RA", 15.0 + 5 * target)
                    .card("DEC", 20.0 + target % 50)
                    .card("FOCUSPOS", 4000 + f);
            if (stack) {
                frame.card("NCOMBINE", FRAMES - 1);
            }
            Path file = stack ? folder.resolve("stack.fits") : folder.resolve("lights/%03d.fits".formatted(f));
            if (stack) {
                preview(cache.plantBlack(file, frame.measured(target)));
            } else {
                cache.plant(file, frame.measured(target));
            }
        }
    }

    private void preview(String digest) throws IOException {
        Path shelf = PictureShelf.cache(root.resolve(".noctuary")).resolve(digest);
        Files.createDirectories(shelf);
        for (int width : new int[] {PlantedFrame.WIDTH}) {
            Files.write(shelf.resolve(width + ".jpg"), new byte[width * 50]);
        }
        Files.writeString(shelf.resolve("size.txt"), "291 220\n291 220\n");
    }

    private void file(String name, String text) throws IOException {
        Path file = root.resolve("entries").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
