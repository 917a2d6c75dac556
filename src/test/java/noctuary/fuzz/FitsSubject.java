package noctuary.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.measure.FrameDraft;
import noctuary.measure.Meter;

/** Plain, gzipped and tile-compressed FITS files: header, pixels, and now and then all that is measured on them. */
final class FitsSubject implements Subject {
    private static final List<String> PACKED = List.of(
            "quantised-no-dither.fits",
            "quantised-dither-1.fits",
            "quantised-dither-2.fits",
            "quantised-hcompress.fits",
            "lossless-gzip-2.fits",
            "/noctuary/fuzz/rice-16.fits",
            "/noctuary/fuzz/rice-tiled.fits",
            "/noctuary/fuzz/plio.fits",
            "/noctuary/fuzz/hcompress-16.fits",
            "/noctuary/fuzz/hcompress-smooth.fits",
            "/noctuary/fuzz/gzip-1.fits");
    /** Measuring takes a thousand times as long as reading. */
    private static final int MEASURED_ONE_IN = 200;

    private final List<byte[]> sound = new ArrayList<>();
    private final Path folder;

    FitsSubject(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
        for (String name : PACKED) {
            try (var in = FitsFile.class.getResourceAsStream(name.startsWith("/") ? name : "/noctuary/fits/" + name)) {
                sound.add(in.readAllBytes());
            }
        }
        byte[] plain = Files.readAllBytes(draft().write(folder.resolve("plain.fits")));
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (var out = new GZIPOutputStream(packed)) {
            out.write(plain);
        }
        sound.add(plain);
        sound.add(plain);
        sound.add(plain);
        sound.add(packed.toByteArray());
    }

    private static FrameDraft draft() {
        return FrameDraft.empty(40, 30, 7)
                .card("DATE-OBS", "'2025-03-15T22:30:15.5'")
                .card("EXPTIME", "12.0")
                .card("OBJECT", "'A long name that goes on &'")
                .card("CONTINUE", "'and on'")
                .card("FILTER", "'Ha'")
                .card("GAIN", "100")
                .card("CCD-TEMP", "-10.0")
                .card("XPIXSZ", "3.76")
                .card("FOCALLEN", "750")
                .card("BAYERPAT", "'GRBG'")
                .card("CTYPE1", "'RA---TAN'")
                .card("CTYPE2", "'DEC--TAN'")
                .card("CRVAL1", "150.0")
                .card("CRVAL2", "20.0")
                .card("CRPIX1", "20.0")
                .card("CRPIX2", "15.0")
                .card("CD1_1", "-0.0004")
                .card("CD2_2", "0.0004")
                .card("DATASUM", "'12345'")
                .card("AIRMASS", "1.2");
    }

    @Override
    public String name() {
        return "fits";
    }

    @Override
    public int attack(long seed) throws Throwable {
        Random random = new Random(seed);
        byte[] mutant = new Mutation(random).of(sound.get(random.nextInt(sound.size())));
        Path file = Files.write(folder.resolve("mutant.fits"), mutant);
        try {
            FitsFile.readHeader(file);
            FitsFile.read(file);
            if (random.nextInt(MEASURED_ONE_IN) == 0) {
                Refusal.require(Meter.measure(file).troubles());
            }
        } catch (UnreadableException e) {
            Refusal.require(e.getMessage());
        }
        return 1;
    }
}
