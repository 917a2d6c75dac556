package noctuary.fits;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Tells from a file's first bytes what it is, before anything else touches it. */
final class Gate {
    private static final int LOOK = 16;
    private static final Map<String, String> STRANGERS = strangers();

    private Gate() {}

    private static Map<String, String> strangers() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("\u0089PNG", "a PNG picture");
        names.put("\u00ff\u00d8\u00ff", "a JPEG picture");
        names.put("II*\0", "a TIFF picture or a camera's raw file");
        names.put("MM\0*", "a TIFF picture or a camera's raw file");
        names.put("GIF8", "a GIF picture");
        names.put("PK\u0003\u0004", "a zip archive");
        names.put("%PDF", "a PDF document");
        return names;
    }

    /** Opens a FITS file, plain or gzipped. */
    static ByteSource open(Path file) throws UnreadableException, IOException {
        if (!Files.isRegularFile(file)) {
            boolean folder = Files.isDirectory(file);
            throw new UnreadableException(folder ? "is a folder" : "is not there", "name an existing FITS file");
        }
        String start = start(file);
        if (start.isEmpty()) {
            throw new UnreadableException("is empty (0 bytes)", "copy the file again from where it was taken");
        }
        if (start.startsWith("\u001f\u008b")) {
            return new InflatedSource(file);
        }
        refusePacked(start);
        if (!start.startsWith("SIMPLE")) {
            throw notFits(start);
        }
        return new FileSource(file);
    }

    static UnreadableException notFits(String start) {
        for (Map.Entry<String, String> stranger : STRANGERS.entrySet()) {
            if (start.startsWith(stranger.getKey())) {
                return new UnreadableException(
                        "is not FITS but " + stranger.getValue(), "give FITS here; pictures belong under versions");
            }
        }
        return new UnreadableException(
                "is not FITS: it does not begin with SIMPLE", "check that this is the file you meant");
    }

    private static void refusePacked(String start) throws UnreadableException {
        if (start.startsWith("BZh")) {
            throw packed("bzip2", "bunzip2");
        }
        if (start.startsWith("\u001f\u009d")) {
            throw packed("Unix compress", "uncompress");
        }
        if (start.startsWith("\u00fd7zXZ")) {
            throw packed("xz", "unxz");
        }
    }

    private static UnreadableException packed(String how, String undo) {
        return new UnreadableException(
                "is packed with " + how + ", which is not read", "unpack it with " + undo + ", or pack it with gzip");
    }

    private static String start(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LOOK), StandardCharsets.ISO_8859_1);
        }
    }
}
