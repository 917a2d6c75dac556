package noctuary.journal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import noctuary.advice.Advice;
import noctuary.advice.Finding;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import noctuary.measure.EntrySheet;
import noctuary.measure.VersionSheet;
import noctuary.review.Reviews;
import noctuary.rig.Check;

/** What a journal was read and measured to say, and what follows from it, before anything is written. */
record Survey(Gathering gathered, Advice advice, List<Problem> problems) {

    static Survey of(Path root, Branches looks, Progress progress) {
        return of(Gathering.of(root, looks, progress));
    }

    static Survey of(Gathering gathered) {
        Advice advice =
                Advice.of(gathered.journal(), gathered.entries(), gathered.rigs(), gathered.noise(), gathered.memo());
        return new Survey(gathered, advice, problems(gathered, advice));
    }

    /** Worked out anew at each call; not every command wants them. */
    Reviews reviews(Function<EntrySheet, List<VersionSheet>> versions) {
        return Reviews.of(gathered.journal(), gathered.entries(), gathered.rigs(), versions, gathered.memo());
    }

    private static List<Problem> problems(Gathering gathered, Advice advice) {
        List<Problem> problems = new ArrayList<>(gathered.journal().problems());
        gathered.rigs()
                .values()
                .forEach(rig -> rig.latest().checks().stream()
                        .filter(c -> c.level() != Check.Level.OK)
                        .forEach(c -> problems.add(
                                Problem.notice(rig.note().file(), c.id(), c.text(), "see the rig's page"))));
        advice.desks()
                .forEach((id, desk) -> desk.findings().stream()
                        .filter(Finding::asksForAction)
                        .forEach(f -> problems.add(
                                Problem.notice(gathered.rigs().get(id).note().file(), f.id(), f.text(), f.settle()))));
        gathered.entries().forEach(e -> problems.addAll(e.problems()));
        return problems;
    }
}
