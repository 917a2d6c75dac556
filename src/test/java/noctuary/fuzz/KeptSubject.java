package noctuary.fuzz;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import noctuary.journal.Progress;
import noctuary.journal.Rendering;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.site.SiteHarm;

/**
 * A journal that comes with a cache from somebody else: files damaged, words in them exchanged for others that would run.
 * The render succeeds. With every other seed files are also forged so that they pass for whole, and then it may fail in
 * a sentence for what no measuring gives; but whatever page it makes does not run.
 */
final class KeptSubject implements Subject {
    private static final int SHORTEST_WORD = 6;
    private static final String WORD = "<script>alert(1)</script>\"><img src=x onerror=alert(1)>";

    private final Path root;
    private final Path cache;
    private final Path output;
    private final Map<Path, byte[]> sound = new TreeMap<>();

    KeptSubject(Path folder) throws Exception {
        root = folder.resolve("kept");
        cache = root.resolve(".noctuary");
        output = root.resolve("output");
        SmallJournal journal = new SmallJournal(root);
        for (int e = 0; e < 3; e++) {
            journal.entry("e" + e, "title: Entry " + e, "target: M 27", "frames: ['*.fits']");
            for (int f = 0; f < 4; f++) {
                journal.frame(
                        "e" + e,
                        f + ".fits",
                        FrameDraft.stars(3, e)
                                .card("EXPTIME", "60.0")
                                .card("OBJECT", "'Dumbbell nebula'")
                                .card("FILTER", "'Hydrogen'")
                                .card("DATE-OBS", "'2025-06-1" + e + "T22:3" + f + ":00'"));
            }
        }
        Rendering.render(root, output, Progress.SILENT);
        try (Stream<Path> all = Files.walk(cache)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                if (!file.toString().endsWith(".jpg")) {
                    sound.put(file, Files.readAllBytes(file));
                }
            }
        }
    }

    @Override
    public String name() {
        return "kept";
    }

    @Override
    public int attack(long seed) throws Throwable {
        Random random = new Random(seed);
        boolean forged = seed % 2 == 0;
        int changed = 0;
        for (Map.Entry<Path, byte[]> file : sound.entrySet()) {
            boolean change = random.nextInt(3) > 0;
            Files.createDirectories(file.getKey().getParent());
            Files.write(file.getKey(), change ? changed(random, forged, file) : file.getValue());
            changed += change ? 1 : 0;
        }
        Path note = root.resolve("entries/e0/entry.md");
        Files.writeString(note, "---\ntitle: Entry " + seed + "\ntarget: M 27\nframes: ['*.fits']\n---\n");
        if (random.nextBoolean()) {
            Folders.clear(output);
        }
        try {
            Rendering.render(root, output, Progress.SILENT);
        } catch (RuntimeException | OutOfMemoryError e) {
            if (!forged) {
                throw e;
            }
        }
        List<String> harm = Files.isDirectory(output) ? SiteHarm.found(output) : List.of();
        if (!harm.isEmpty()) {
            throw new IllegalStateException("a page could run: " + harm.get(0));
        }
        return changed;
    }

    private static byte[] changed(Random random, boolean forged, Map.Entry<Path, byte[]> file) {
        byte[] sound = file.getValue();
        byte[] changed = random.nextBoolean() ? new Mutation(random).of(sound) : reworded(random, sound);
        boolean board = file.getKey().toString().contains("worked-out");
        return forged ? summed(changed, board ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN) : changed;
    }

    /** Words of the same length, so that all else stays where it is. */
    private static byte[] reworded(Random random, byte[] sound) {
        byte[] bytes = sound.clone();
        byte[] word = WORD.getBytes(StandardCharsets.US_ASCII);
        int start = 0;
        for (int i = 0; i <= bytes.length; i++) {
            boolean text =
                    i < bytes.length && (Character.isLetterOrDigit(bytes[i]) || bytes[i] == ' ' || bytes[i] == '-');
            if (!text) {
                if (i - start >= SHORTEST_WORD && random.nextInt(3) == 0) {
                    System.arraycopy(word, 0, bytes, start, Math.min(word.length, i - start));
                }
                start = i + 1;
            }
        }
        return bytes;
    }

    /** As kept files are: the last eight bytes are a sum of the others. */
    private static byte[] summed(byte[] bytes, ByteOrder order) {
        int length = bytes.length - Long.BYTES;
        if (length < 0) {
            return bytes;
        }
        CRC32 crc = new CRC32();
        crc.update(bytes, 0, length);
        ByteBuffer.wrap(bytes).order(order).putLong(length, crc.getValue());
        return bytes;
    }
}
