package noctuary.journal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import noctuary.entry.Journal;
import noctuary.entry.Nearest;
import noctuary.fact.Problem;
import noctuary.measure.VersionSheets;
import noctuary.review.Review;
import noctuary.review.Reviews;
import noctuary.site.ChangeRecords;

/** One review for the terminal: two rigs, two sites, or one change of a journal. */
public final class Reviewing {
    private final Set<String> rigs;
    private final Set<String> sites;
    private final Reviews reviews;

    private Reviewing(Journal journal, Reviews reviews) {
        this.rigs = journal.rigs().keySet();
        this.sites = journal.sites().keySet();
        this.reviews = reviews;
    }

    /** @param json one object on one line */
    public record Outcome(String json, String table, List<Problem> problems) {}

    /**
     * Around one change.
     *
     * @throws RefusedException when there is no such change
     */
    public static Outcome change(Path root, String id, Progress progress) throws RefusedException {
        Survey survey = Survey.of(root, Places.entries(root), progress);
        return outcome(survey, new Reviewing(survey.gathered().journal(), reviews(survey, root)).change(id));
    }

    /**
     * Between two rigs or two sites.
     *
     * @throws RefusedException when they are no two of a kind
     */
    public static Outcome between(Path root, String before, String after, Progress progress) throws RefusedException {
        Survey survey = Survey.of(root, Places.entries(root), progress);
        return outcome(
                survey, new Reviewing(survey.gathered().journal(), reviews(survey, root)).between(before, after));
    }

    private static Reviews reviews(Survey survey, Path root) {
        VersionSheets versions = new VersionSheets(survey.gathered().files(), Places.cache(root));
        return survey.reviews(sheet -> versions.of(sheet.entry()));
    }

    private static Outcome outcome(Survey survey, Review review) {
        return new Outcome(ChangeRecords.json(review), ReviewTable.of(review), survey.problems());
    }

    private Review change(String id) throws RefusedException {
        if (rigs.contains(id) || sites.contains(id)) {
            throw new RefusedException(quoted(id) + " is a " + (rigs.contains(id) ? "rig" : "site")
                    + "; name another one beside it, or a change (" + changes() + ")");
        }
        if (reviews.ids().isEmpty()) {
            throw new RefusedException("there is no change " + quoted(id) + ", nor any other in this journal yet: "
                    + "a second rig or site, a part with a date, or a line changes: in a note makes one");
        }
        return reviews.around(id)
                .orElseThrow(() -> new RefusedException(
                        "there is no change " + quoted(id) + "; " + Nearest.hint(id, reviews.ids())));
    }

    private Review between(String before, String after) throws RefusedException {
        known(before);
        known(after);
        if (before.equals(after)) {
            throw new RefusedException("both sides are " + quoted(before) + "; name two different rigs or sites");
        }
        if (rigs.contains(before) && rigs.contains(after)) {
            return reviews.rigs(before, after);
        }
        if (sites.contains(before) && sites.contains(after)) {
            return reviews.sites(before, after);
        }
        throw new RefusedException(quoted(before) + " is a " + kind(before) + " and " + quoted(after) + " a "
                + kind(after) + "; compare two rigs or two sites");
    }

    private void known(String name) throws RefusedException {
        if (reviews.ids().contains(name)) {
            throw new RefusedException(quoted(name) + " is a change and has both its sides; name it alone");
        }
        if (!rigs.contains(name) && !sites.contains(name)) {
            List<String> known = new ArrayList<>(rigs);
            known.addAll(sites);
            throw new RefusedException("there is no rig or site " + quoted(name) + "; " + Nearest.hint(name, known));
        }
    }

    private String kind(String name) {
        return rigs.contains(name) ? "rig" : "site";
    }

    private String changes() {
        return reviews.ids().isEmpty() ? "none yet" : String.join(", ", reviews.ids());
    }

    private static String quoted(String name) {
        return '"' + name + '"';
    }
}
