package noctuary.measure;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import noctuary.effect.Effect;
import noctuary.effect.Pixels;
import noctuary.effect.Side;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.UnreadablePictureException;
import noctuary.stars.StarField;

/** Compares two files that were measured; one after the other is in memory. */
final class EffectMeter {
    /** Raised whenever the same pixels give other numbers than before. */
    static final String ENGINE = "8";

    private EffectMeter() {}

    static Effect measure(Path origin, Measurement before, Path picture, Measurement after) {
        return Effect.measure(side(before), () -> pixels(origin), side(after), () -> pixels(picture));
    }

    private static Side side(Measurement m) {
        return new Side(
                m.width(),
                m.height(),
                m.planes().size(),
                m.field().map(StarField::stars).orElse(List.of()));
    }

    private static Pixels pixels(Path file) {
        try {
            if (Meter.isPicture(file)) {
                PictureImage picture = PictureFile.read(file);
                return new Pixels(picture.planes(), picture.white(), isJpeg(file));
            }
            return new Pixels(FitsFile.read(file).planes(), Double.POSITIVE_INFINITY, false);
        } catch (UnreadableException | UnreadablePictureException e) {
            throw new IllegalStateException(file.getFileName() + " could be read a moment ago", e);
        }
    }

    private static boolean isJpeg(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".jpg") || name.endsWith(".jpeg");
    }
}
