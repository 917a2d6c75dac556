package noctuary.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.fits.FitsFile;
import noctuary.fits.UnreadableException;
import noctuary.keep.NewFile;

/** New entries from the headers of frames: what they tell is filled in, what they cannot is asked. */
public final class Noting {
    private Noting() {}

    /**
     * @param written new notes
     * @param existing notes that were already there and were left as they are
     * @param skipped calibration frames, which make no entry
     * @param unreached the folder that holds all frames of new notes which lie neither in the journal nor in an archive
     */
    public record Outcome(
            List<Path> written, List<Path> existing, int skipped, Optional<Path> unreached, List<Problem> problems) {}

    /**
     * One entry for each target, night and rig among the frames; never overwrites.
     *
     * @param places frames, or folders to search for them
     * @throws RefusedException when a place does not exist or holds no frame
     */
    public static Outcome note(Path root, List<Path> places) throws IOException, RefusedException {
        Journal journal = Journal.read(root);
        List<Problem> problems = new ArrayList<>(ofSettings(journal));
        List<SeenFrame> lights = new ArrayList<>();
        int skipped = 0;
        for (Path frame : FrameHunt.find(places)) {
            try {
                SeenFrame seen = SeenFrame.of(frame, FitsFile.readHeader(frame), journal);
                if (seen.header().kind().isCalibration()) {
                    skipped++;
                } else {
                    lights.add(seen);
                }
            } catch (UnreadableException e) {
                problems.add(Problem.fault(frame.toString(), "", e.getMessage(), e.hint()));
            }
        }
        List<Path> written = new ArrayList<>();
        List<Path> existing = new ArrayList<>();
        List<Path> unreached = new ArrayList<>();
        for (FrameGroup group : FrameGroups.of(journal, lights)) {
            Path note = root.resolve("entries").resolve(group.slug()).resolve("entry.md");
            boolean isNew = write(note, NoteText.of(journal, group));
            (isNew ? written : existing).add(note);
            if (isNew && !FramePatterns.reach(journal, group)) {
                group.frames().forEach(frame -> unreached.add(frame.path().getParent()));
            }
        }
        return new Outcome(written, existing, skipped, unreached.stream().reduce(Noting::shared), problems);
    }

    private static Path shared(Path a, Path b) {
        Path shared = a;
        while (!b.startsWith(shared)) {
            shared = shared.getParent();
        }
        return shared;
    }

    /** What is wrong with the settings and rigs that a new note leans on. */
    private static List<Problem> ofSettings(Journal journal) {
        return journal.problems().stream()
                .filter(Problem::isFault)
                .filter(p -> p.file().endsWith("journal.yaml") || p.file().contains("/rigs/"))
                .toList();
    }

    private static boolean write(Path note, Collection<String> lines) throws IOException {
        if (Files.exists(note)
                || Files.exists(note.getParent().resolveSibling(note.getParent().getFileName() + ".md"))) {
            return false;
        }
        String text = String.join("\n", lines) + "\n";
        NewFile.write(note, text.getBytes(StandardCharsets.UTF_8));
        return true;
    }
}
