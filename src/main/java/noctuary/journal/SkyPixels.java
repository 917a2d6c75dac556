package noctuary.journal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import noctuary.fits.FitsFile;
import noctuary.fits.FitsImage;
import noctuary.fits.UnreadableException;
import noctuary.image.Affine;
import noctuary.image.Mosaic;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import noctuary.image.Resample;
import noctuary.image.UnreadablePictureException;

/**
 * The pixels of an attempt.
 *
 * @param white of a finished picture
 * @param toPlanes from pixels of the file to those of the planes, which are smaller for a mosaic
 */
record SkyPixels(List<Plane> planes, float white, Affine toPlanes, boolean mosaic) {

    /** @throws IOException when the file, which was readable when it was measured, is so no more */
    static SkyPixels read(SkyAttempt attempt) throws IOException {
        try {
            if (attempt.finished()) {
                PictureImage picture = PictureFile.read(attempt.file());
                return new SkyPixels(picture.planes(), picture.white(), Affine.SAME, false);
            }
            return linear(FitsFile.read(attempt.file()));
        } catch (UnreadableException | UnreadablePictureException e) {
            throw new IOException(attempt.file() + ": " + e.getMessage(), e);
        }
    }

    private static SkyPixels linear(FitsImage image) {
        List<Plane> planes = image.planes();
        Optional<Mosaic> mosaic = image.header().mosaic().map(c -> c.value());
        if (planes.size() == 1 && mosaic.isPresent()) {
            List<Plane> colours = Resample.colours(planes.get(0), mosaic.get(), Integer.MAX_VALUE);
            return new SkyPixels(colours, 1, Affine.enlarged(2).inverse(), true);
        }
        return new SkyPixels(planes, 1, Affine.SAME, false);
    }
}
