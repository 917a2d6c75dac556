package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.UnreadablePictureException;
import noctuary.measure.FrameReport.Kind;
import noctuary.measure.FrameReport.Trouble;
import noctuary.stars.StarField;

/** Measures a processed picture as it is: its widths are those of the stretched picture, not of the sky. */
final class PictureMeter {
    private PictureMeter() {}

    static Measurement measure(Path file) {
        try {
            PictureImage picture = PictureFile.read(file);
            List<Trouble> troubles = new ArrayList<>();
            troubles.add(new Trouble(
                    "stars",
                    "a stretched picture: star widths are those of the picture, not of the sky",
                    "compare it only with pictures stretched alike"));
            picture.conversion().ifPresent(how -> troubles.add(new Trouble("colours", how, "save it as RGB")));
            StarField.Conditions conditions =
                    new StarField.Conditions(Optional.empty(), OptionalDouble.of(picture.white()));
            return Meter.of(Kind.PICTURE, picture.planes(), conditions, Optional.empty(), "", troubles);
        } catch (UnreadablePictureException e) {
            return Measurement.unreadable(Kind.PICTURE, e.getMessage(), e.hint());
        }
    }
}
