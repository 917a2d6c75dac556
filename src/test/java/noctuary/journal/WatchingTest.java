package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class WatchingTest {
    @TempDir
    private Path root;

    private final BlockingQueue<Object> told = new LinkedBlockingQueue<>();
    private Thread watcher;

    @AfterEach
    void stop() throws InterruptedException {
        if (watcher != null) {
            watcher.interrupt();
            watcher.join();
        }
    }

    private SmallJournal watched() {
        SmallJournal journal =
                new SmallJournal(root).entry("m27", "title: First", "exposure: [{count: 1, seconds: 60}]");
        watcher = new Thread(() -> {
            try {
                Watching.watch(root, root.resolve("output"), Progress.SILENT, new Watching.Listener() {
                    @Override
                    public void rendered(Rendering.Outcome outcome) {
                        told.add(outcome);
                    }

                    @Override
                    public void failed(Exception why) {
                        told.add(why);
                    }
                });
            } catch (RefusedException e) {
                told.add(e);
            }
        });
        watcher.start();
        return journal;
    }

    private Object next() throws InterruptedException {
        return told.poll(30, TimeUnit.SECONDS);
    }

    private String page() throws Exception {
        return Files.readString(root.resolve("output/entries/m27/index.html"));
    }

    @Test
    void aSavedNoteIsRenderedAgain() throws Exception {
        SmallJournal journal = watched();
        assertThat(next()).isInstanceOf(Rendering.Outcome.class);
        assertThat(page()).contains("First");
        journal.entry("m27", "title: Second", "exposure: [{count: 1, seconds: 60}]");
        assertThat(next()).isInstanceOf(Rendering.Outcome.class);
        assertThat(page()).contains("Second");
    }

    @Test
    void aHalfSavedNoteIsAProblemAndTheNextSaveIsRendered() throws Exception {
        SmallJournal journal = watched();
        next();
        journal.file("m27/entry.md", "---", "title: \"Half");
        assertThat(((Rendering.Outcome) next()).problems()).anyMatch(p -> p.isFault());
        journal.entry("m27", "title: Whole", "exposure: [{count: 1, seconds: 60}]");
        assertThat(((Rendering.Outcome) next()).problems()).noneMatch(p -> p.isFault());
        assertThat(page()).contains("Whole");
    }

    @Test
    void aBrokenTemplateLeavesTheLastSiteStanding() throws Exception {
        watched();
        next();
        Path templates = Files.createDirectories(root.resolve("site-templates"));
        Files.writeString(templates.resolve("entry.ftlh"), "<#if broken>");
        assertThat(next()).isInstanceOf(Exception.class);
        assertThat(page()).contains("First");
        Files.delete(templates.resolve("entry.ftlh"));
        assertThat(next()).isInstanceOf(Rendering.Outcome.class);
    }

    @Test
    void aFirstRenderThatIsRefusedEndsTheWatch() throws Exception {
        new SmallJournal(root);
        Files.createDirectories(root.resolve("output"));
        Files.writeString(root.resolve("output/mine.txt"), "mine");
        assertThatThrownBy(() -> Watching.watch(root, root.resolve("output"), Progress.SILENT, null))
                .isInstanceOf(RefusedException.class);
    }
}
