package noctuary.image;

import java.io.EOFException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageReader;

/** JPEG decoding goes on with grey where the file ends; such a picture must not be measured. */
final class JpegWarnings {
    private final List<String> heard = new ArrayList<>();

    private JpegWarnings() {}

    static JpegWarnings of(ImageReader reader) {
        JpegWarnings warnings = new JpegWarnings();
        reader.addIIOReadWarningListener((source, warning) -> warnings.heard.add(warning));
        return warnings;
    }

    void requireWhole() throws EOFException {
        if (heard.stream().anyMatch(w -> w.toLowerCase(Locale.ROOT).contains("premature"))) {
            throw new EOFException();
        }
    }
}
