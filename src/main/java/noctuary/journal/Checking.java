package noctuary.journal;

import java.nio.file.Path;
import java.util.List;
import noctuary.fact.Problem;

/** Everything wrong with a journal, without writing a page. */
public final class Checking {
    private Checking() {}

    /** @param entries number of entries looked at */
    public record Outcome(int entries, List<Problem> problems) {}

    public static Outcome check(Path root, Progress progress) {
        Survey survey = Survey.of(root, Places.entries(root), progress);
        return new Outcome(survey.gathered().entries().size(), survey.problems());
    }
}
