package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import noctuary.keep.Memo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was kept of a change's measures gives the same verdicts as working all of them out. */
class TestedTest {
    private static final Set<Influence> RIG = Set.of(Influence.RIG);
    private static final double[] POOR = {4.1, 3.9, 4.4, 4.0, 4.2, 3.8, 4.3, 4.05};
    private static final double[] GOOD = {3.0, 2.8, 3.3, 2.9, 3.1, 2.7, 3.2, 3.05};
    private static final double[] BETTER_YET = {3.0, 2.8, 3.3, 2.9, 1.1, 2.7, 3.2, 3.05};

    @TempDir
    private Path folder;

    @Test
    void onlyTheMeasureWithAnotherValueIsTestedAgain() throws IOException {
        sameAsAfresh(RIG, GOOD, GOOD);
        assertThat(rewritten(RIG, GOOD, BETTER_YET)).containsExactly("rig-a-b-hotPixels");
        assertThat(rewritten(RIG, BETTER_YET, BETTER_YET)).containsExactly("rig-a-b-fwhm");
    }

    @Test
    void whatTheChangeItselfMovesCounts() throws IOException {
        sameAsAfresh(RIG, GOOD, GOOD);
        assertThat(rewritten(Set.of(Influence.SITE), GOOD, GOOD)).hasSize(2);
    }

    private List<String> rewritten(Set<Influence> changed, double[] fwhm, double[] hot) throws IOException {
        FileTime old = FileTime.fromMillis(0);
        for (Path file : kept()) {
            Files.setLastModifiedTime(file, old);
        }
        sameAsAfresh(changed, fwhm, hot);
        List<Path> young = kept();
        for (Path file : kept()) {
            if (Files.getLastModifiedTime(file).equals(old)) {
                young.remove(file);
            }
        }
        return young.stream().map(file -> file.getFileName().toString()).toList();
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("tests"))) {
            return new ArrayList<>(all.toList());
        }
    }

    private void sameAsAfresh(Set<Influence> changed, double[] fwhm, double[] hot) {
        Memo memo = Memo.in(folder, "this program");
        List<MeasureNights> measures = List.of(
                new MeasureNights(Nights.FWHM, true, Nights.before(POOR), Nights.after(fwhm)),
                new MeasureNights(Nights.HOT, false, Nights.before(POOR), Nights.after(hot)));
        String key = Judged.key(changed, measures);
        assertThat(Judged.of(key, "rig-a-b", changed, measures, memo)).isEqualTo(Judgement.of(changed, measures));
    }
}
