package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After any change, a render that takes over what it can gives byte for byte the site of a journal rendered afresh. */
class IncrementalTest {
    @TempDir
    private Path folder;

    private Path root;
    private SmallJournal journal;
    private int afresh;

    @BeforeEach
    void journal() throws IOException {
        root = folder.resolve("nights");
        journal = new SmallJournal(root);
        for (int e = 0; e < 4; e++) {
            note(e, "Night " + e, "frames: ['*.fits']", "stack: stack.fit");
            for (int f = 0; f < 3; f++) {
                frame(e, f, e);
            }
            journal.frame("e" + e, "stack.fit", FrameDraft.stars(3, e).card("NCOMBINE", "3"));
        }
    }

    private void frame(int e, int f, long seed) {
        journal.frame(
                "e" + e,
                "f" + f + ".fits",
                FrameDraft.stars(3 + 0.2 * f, seed)
                        .card("EXPTIME", "60.0")
                        .card("DATE-OBS", "'2025-06-1" + e + "T22:3" + f + ":00'"));
    }

    private void note(int e, String title, String... more) {
        String[] lines = Stream.concat(Stream.of("title: " + title, "target: M 27"), Stream.of(more))
                .toArray(String[]::new);
        journal.entry("e" + e, lines);
    }

    private void picture(String name, int width) throws IOException {
        BufferedImage image = new BufferedImage(width, 48, BufferedImage.TYPE_INT_RGB);
        image.setRGB(width / 2, 20, 0xffffff);
        ImageIO.write(image, "png", root.resolve("entries").resolve(name).toFile());
    }

    private static Map<String, String> site(Path journal) throws Exception {
        Rendering.render(journal, journal.resolve("output"), Progress.SILENT);
        return SiteBytes.of(journal.resolve("output"));
    }

    private void sameAsAfresh(String after) throws Exception {
        Map<String, String> taken = site(root);
        Path copy = folder.resolve("afresh-" + ++afresh).resolve("nights");
        for (String part : new String[] {"entries", "site-templates"}) {
            if (Files.exists(root.resolve(part))) {
                copy(root.resolve(part), copy.resolve(part));
            }
        }
        Map<String, String> fresh = site(copy);
        assertThat(taken.keySet()).as(after).isEqualTo(fresh.keySet());
        taken.forEach((path, text) -> assertThat(text).as(after + ": " + path).isEqualTo(fresh.get(path)));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                Files.createDirectories(target.getParent());
                Files.copy(each, target);
            }
        }
    }

    private Object identity(String path) throws IOException {
        return Files.readAttributes(root.resolve("output").resolve(path), BasicFileAttributes.class)
                .fileKey();
    }

    @Test
    void notes() throws Exception {
        sameAsAfresh("nothing");
        note(1, "Night 1, told anew", "frames: ['*.fits']", "lessons: [{about: focus, do: refocus}]");
        sameAsAfresh("a note changed");
        note(2, "Night 2", "frames: ['*.fits']", "closes: [e1#focus]", "changes: [a new dew band]");
        sameAsAfresh("a lesson closed, a change made");
        FolderTree.delete(root.resolve("entries/e0"));
        sameAsAfresh("a note removed");
        journal.file("e9.md", "---", "date: 2025-07-01", "exposure: [{count: 3, seconds: 60}]", "---", "See [2](e2).");
        sameAsAfresh("a note added");
        journal.file("e3/entry.md", "---", "title: [", "---");
        sameAsAfresh("a note broken");
    }

    @Test
    void notesThatLeanOnOthers() throws Exception {
        note(1, "Night 1", "frames: ['../e0/*.fits', '*.fits']");
        journal.file(
                "e2/entry.md", "---", "frames: ['*.fits']", "---", "As [before](../e3/entry.md), [here](../e7.md).");
        sameAsAfresh("nothing");
        frame(0, 3, 55);
        sameAsAfresh("a frame added to a folder that another note names");
        journal.file("e7.md", "---", "date: 2025-07-01", "exposure: [{count: 3, seconds: 60}]", "---");
        sameAsAfresh("a note now where a link led nowhere");
        FolderTree.delete(root.resolve("entries/e3"));
        sameAsAfresh("a note gone that another links to");
    }

    @Test
    void rigsSitesAndSettings() throws Exception {
        sameAsAfresh("nothing");
        journal.file("rigs/heron.md", "---", "name: Heron", "optics: {aperture: 160 mm, focal length: 800 mm}", "---");
        sameAsAfresh("a rig changed");
        journal.file("rigs/crane.md", "---", "name: Crane", "---");
        note(3, "Night 3", "rig: crane", "frames: ['*.fits']");
        sameAsAfresh("a rig added");
        journal.file("sites/terrace.md", "---", "name: Roof", "latitude: 50 deg", "time zone: Europe/Oslo", "---");
        sameAsAfresh("a site changed");
        journal.file("journal.yaml", "title: N", "site: terrace", "rig: heron", "publish: {file names: yes}");
        sameAsAfresh("settings changed");
    }

    @Test
    void framesAndPictures() throws Exception {
        sameAsAfresh("nothing");
        frame(1, 3, 77);
        sameAsAfresh("a frame added");
        Files.delete(root.resolve("entries/e2/f1.fits"));
        sameAsAfresh("a frame removed");
        frame(3, 0, 99);
        sameAsAfresh("a frame changed");
        journal.frame("e0", "stack.fit", FrameDraft.stars(4, 5).card("NCOMBINE", "4"));
        sameAsAfresh("a stack changed");
        picture("e1/p.png", 64);
        note(1, "Night 1", "frames: ['*.fits']", "versions: [{name: soft, image: p.png, from: stack, steps: []}]");
        sameAsAfresh("a version added");
        picture("e1/p.png", 32);
        sameAsAfresh("a picture changed");
    }

    @Test
    void templates() throws Exception {
        sameAsAfresh("nothing");
        Path own = root.resolve("site-templates");
        Files.createDirectories(own.resolve("assets"));
        Files.writeString(own.resolve("entry.ftlh"), "<!DOCTYPE html><title>${page.title}</title>");
        sameAsAfresh("a template overridden");
        Files.writeString(own.resolve("assets/site.css"), "body { color: red }");
        sameAsAfresh("a style overridden");
        FolderTree.delete(own);
        sameAsAfresh("templates removed");
    }

    @Test
    void pagesThatShowTheSameAreTakenOver() throws Exception {
        site(root);
        Object before = identity("entries/e0/index.html");
        note(3, "Night 3", "frames: ['*.fits']", "lost: [{minutes: 5, cause: cloud}]");
        site(root);
        assertThat(identity("entries/e0/index.html")).isEqualTo(before);
        assertThat(root.resolve("output/entries/e3/index.html")).content().contains("cloud");
    }

    @Test
    void nothingIsTakenOverFromASiteThatSomebodyTouched() throws Exception {
        Map<String, String> whole = site(root);
        Files.writeString(root.resolve("output/entries/e0/index.html"), "mine");
        note(3, "Night 3 ", "frames: ['*.fits']", "stack: stack.fit");
        assertThat(site(root).get("entries/e0/index.html")).isEqualTo(whole.get("entries/e0/index.html"));
    }
}
