package noctuary.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import noctuary.fact.Problem;

/** Everything found wrong while a journal is read, in the order of files and lines. */
final class Ledger {
    record Noted(int line, Problem problem) {}

    private static final Comparator<Noted> BY_FILE_AND_LINE =
            Comparator.comparing((Noted noted) -> noted.problem().file()).thenComparingInt(Noted::line);

    private final List<Noted> notes = new ArrayList<>();

    void add(int line, Problem problem) {
        notes.add(new Noted(line, problem));
    }

    void add(List<Noted> more) {
        notes.addAll(more);
    }

    List<Noted> notes() {
        return notes;
    }

    List<Problem> problems() {
        return notes.stream()
                .sorted(BY_FILE_AND_LINE)
                .map(Noted::problem)
                .distinct()
                .toList();
    }
}
