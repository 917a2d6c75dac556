package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import noctuary.measure.FrameDraft;

/**
 * A journal with a keeper's life in every place that could give it away. Every planted text holds one of {@link #MARKS},
 * every planted place one of {@link #PLACES}.
 */
final class PlantedLife {
    static final List<String> MARKS = List.of("zquser", "zq user", "zqname", "zqserial", "zqlane", "zqpicture");
    /** Latitude and longitude as degrees, minutes and as a header writes them; elevation; the region of the zone. */
    static final List<String> PLACES =
            List.of("47.209", "47 12 33", "47:12:33", "8.765", "8 45 55", "8:45:55", "613.7", "chatham");

    private static final String HOME = "/home/zquser/astro/";
    private static final String SPACED = "C:\\\\Users\\\\Zq User\\\\night one\\\\";
    private static final String PICTURE =
            "zqpicture by zquser, zqserial 4711, 47 12 33 N 8 45 55 E, /home/zquser/a.tif";

    private final Path root;

    /** @param folder to lie in; the journal's own path tells a name too */
    PlantedLife(Path folder, String publish) throws IOException {
        this.root = Files.createDirectories(folder.resolve("zquser home/zq user/nights"));
        Files.createDirectories(folder.resolve("zquser home/zqlane frames"));
        text(
                "entries/journal.yaml",
                "title: Nights above Averil",
                "site: terrace",
                "rig: heron",
                "archive: {main: \"../../../zqlane frames\", gone: " + HOME + "gone}",
                "publish: " + publish);
        text(
                "entries/sites/terrace.md",
                "---",
                "name: Terrace",
                "latitude: 47.2093612 deg",
                "longitude: 8.7654321 deg",
                "elevation: 613.7 m",
                "time zone: Pacific/Chatham",
                "address: 7 Zqlane",
                "---");
        rig();
        entry();
        broken();
        frames(folder.resolve("zquser home/zqlane frames"));
    }

    Path root() {
        return root;
    }

    private void rig() throws IOException {
        text(
                "entries/rigs/heron.md",
                "---",
                "name: Heron",
                "optics: {aperture: 150 mm, focal length: 750 mm, serial: zqserial-1}",
                "camera: {pixel: 3.3 µm, width: 200, height: 150, gain: 0.3 e/ADU, serial number: zqserial-2}",
                "serial: zqserial-3",
                "---",
                "A picture: ![the tube](zqname-tube.jpg)");
        bytes("entries/rigs/zqname-tube.jpg", MarkedPictures.jpeg(PICTURE));
    }

    private void entry() throws IOException {
        text(
                "entries/crescent/entry.md",
                "---",
                "title: The crescent",
                "frames: [\"main:*.fits\", " + HOME + "secret/*.fits, \"" + SPACED
                        + "a.fits\", ../../../zqname/*.fits]",
                "stack: zqname-stack.fits",
                "versions:",
                "  - {name: gentle, image: zqname-gentle.png, from: stack}",
                "  - {name: soft, image: zqname-soft.jpg, from: gentle}",
                "  - {name: flat, image: zqname-flat.tif, from: stack}",
                "  - {name: lost, image: " + HOME + "lost.png, from: stack}",
                "  - {name: torn, image: zqname-torn.png, from: stack}",
                "---",
                "![one](zqname-gentle.png) ![two](zqname-soft.jpg) ![three](zqname-three.gif)",
                "[four](file:///home/zquser/four.txt) ![five](/home/zquser/five.png)",
                "[six](../../../../zqname/six.txt) ![seven](zqname-torn.png) ![eight](zqname-flat.png)");
        bytes("entries/crescent/zqname-gentle.png", MarkedPictures.png(PICTURE));
        bytes("entries/crescent/zqname-flat.png", MarkedPictures.png(PICTURE));
        bytes("entries/crescent/zqname-soft.jpg", MarkedPictures.jpeg(PICTURE));
        bytes("entries/crescent/zqname-three.gif", MarkedPictures.gif(PICTURE));
        bytes("entries/crescent/zqname-flat.tif", MarkedPictures.tiff(PICTURE));
        bytes("entries/crescent/zqname-torn.png", java.util.Arrays.copyOf(MarkedPictures.png(PICTURE), 900));
        frame(1).write(root.resolve("entries/crescent/zqname-stack.fits"));
    }

    /** Nothing in it can be read, and every complaint could quote a path. */
    private void broken() throws IOException {
        text(
                "entries/broken.md",
                "---",
                "title: Broken",
                "rig: " + HOME + "rig",
                "frames: [\"" + HOME + "Zq User/one.fits\", \"gone:zqname.fits\", lights/nothing.fits]",
                "stack: " + HOME + "stack.fits",
                "night: /home/zquser/night",
                "exposure: [{count: 4, seconds: 60, filter: L}]",
                "---",
                "Nothing.");
    }

    private void frames(Path archive) throws IOException {
        for (int i = 1; i <= 4; i++) {
            frame(i).write(archive.resolve("zqname-" + i + ".fits"));
        }
        Files.writeString(archive.resolve("zqname-9.fits"), "SIMPLE  =                    T /home/zquser");
    }

    private static FrameDraft frame(int n) {
        return FrameDraft.stars(3, n)
                .card("DATE-OBS", "'2025-03-14T21:0" + n + ":00'")
                .card("EXPTIME", "60.0")
                .card("OBJECT", "'NGC 6888'")
                .card("FILTER", "'Ha /home/zquser/filters.txt'")
                .card("INSTRUME", "'Camera zqserial-4711'")
                .card("TELESCOP", "'Tube zqserial-4712'")
                .card("CAMSN", "'zqserial-4713'")
                .card("OBSERVER", "'Zq User'")
                .card("ORIGIN", "'Zqlane 7'")
                .card("AUTHOR", "'zquser'")
                .card("SITELAT", "'47 12 33.7'")
                .card("SITELONG", "'8 45 55.5'")
                .card("SITEELEV", "613.7")
                .card("OBSGEO-B", "47.2093612")
                .card("OBSGEO-L", "8.7654321")
                .card("LAT-OBS", "47.2093612")
                .card("LONG-OBS", "8.7654321")
                .card("FILENAME", "'/home/zquser/a.fits'")
                .card("HISTORY", "/home/zquser/master dark of Zq User")
                .card("COMMENT", "Zqlane 7, 47:12:33 8:45:55");
    }

    private void text(String name, String... lines) throws IOException {
        bytes(name, String.join("\n", lines).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private void bytes(String name, byte[] bytes) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
