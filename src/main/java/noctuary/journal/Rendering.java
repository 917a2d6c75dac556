package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import noctuary.measure.EntrySheet;
import noctuary.measure.VersionSheet;
import noctuary.measure.VersionSheets;
import noctuary.review.Review;
import noctuary.site.Abreast;
import noctuary.site.Draft;
import noctuary.site.Former;
import noctuary.site.MadeSite;
import noctuary.site.Piece;
import noctuary.site.SiteContent;
import noctuary.site.SiteWriter;

/** A journal to its site. */
public final class Rendering {
    private Rendering() {}

    /**
     * @param files frames, stacks and pictures looked at
     * @param measuredNow of these, the ones that were not in the cache
     * @param standing whether nothing had changed, so that the site was left as it stands
     */
    public record Outcome(int entries, int files, int measuredNow, boolean standing, List<Problem> problems) {
        /** The same of a site of which something was written, though nothing was measured. */
        Outcome written() {
            return new Outcome(entries, files, 0, false, problems);
        }
    }

    /**
     * Leaves the site alone when nothing that it was made from has changed.
     *
     * @throws RefusedException when {@code output} holds something that is not a site of ours
     * @throws IOException when the site cannot be written; the old one then still stands
     */
    public static Outcome render(Path root, Path output, Progress progress) throws IOException, RefusedException {
        return render(root, output, progress, false);
    }

    /** As {@link #render}, whether or not something has changed. */
    public static Outcome anew(Path root, Path output, Progress progress) throws IOException, RefusedException {
        return render(root, output, progress, true);
    }

    private static Outcome render(Path root, Path output, Progress progress, boolean anew)
            throws IOException, RefusedException {
        Places.refuseBlockedCache(root);
        RenderTurn turn = RenderTurn.take(Places.cache(root));
        try {
            Render render = Render.of(root, output);
            Optional<Standing> before = anew ? Optional.empty() : render.former();
            if (before.isPresent()) {
                if (render.same(before.get())) {
                    return before.get().outcome();
                }
                Optional<Outcome> again = render.again(before.get());
                if (again.isPresent()) {
                    return again.get();
                }
            }
            ShownFiles shown = ShownFiles.of(root, output);
            Former former =
                    before.map(b -> Former.at(output, shown.find(b.site()))).orElse(Former.none());
            Site site = alone(root, output, render.looks(), new Earlier(shown, former, anew), progress);
            shown.keep(render.keep(site.journal(), site.made(), site.outcome()), site.pieces());
            return site.outcome();
        } finally {
            turn.end();
        }
    }

    private record Site(Journal journal, MadeSite made, Map<String, Piece> pieces, Outcome outcome) {}

    /** @param anew whether only pictures may stay of sites before */
    private record Earlier(ShownFiles shown, Former standing, boolean anew) {
        Draft begin(Publication publication) throws IOException {
            Map<String, Piece> spare = publication.earlier();
            return Draft.of(publication.draft(), anew ? ShownFiles.picturesOf(spare) : spare, standing);
        }
    }

    private static Site alone(Path root, Path output, Branches looks, Earlier earlier, Progress progress)
            throws IOException, RefusedException {
        Publication publication = Publication.begin(root, output, earlier.shown());
        try {
            Gathering gathered = Gathering.of(root, looks, progress);
            Draft draft = earlier.begin(publication);
            Map<String, List<VersionSheet>> versions = versions(gathered, root, progress);
            Attachments.Published attached = Attachments.publish(gathered.journal(), draft);
            Parts parts = parts(gathered, versions, Places.cache(root), draft, progress);
            SiteContent content = parts.content(gathered, versions, attached.unshown());
            MadeSite made = SiteWriter.write(content, Places.ownTemplates(root), draft, gathered.memo());
            List<Problem> problems = new ArrayList<>(parts.survey().problems());
            problems.addAll(unreadable(gathered));
            problems.addAll(attached.problems());
            draft.clear();
            publication.publish();
            gathered.memo().save();
            return new Site(gathered.journal(), made, draft.pieces(), outcome(gathered, problems));
        } finally {
            publication.abandon();
        }
    }

    private record Parts(Survey survey, List<Review> reviews, SitePictures pictures) {
        SiteContent content(Gathering gathered, Map<String, List<VersionSheet>> versions, Map<String, String> unshown) {
            return new SiteContent(
                    gathered.journal(),
                    gathered.entries(),
                    gathered.rigs(),
                    gathered.targets(),
                    reviews,
                    survey.advice(),
                    pictures.entries(),
                    versions,
                    pictures.skies(),
                    unshown);
        }
    }

    /** To put pictures into a site is mostly waiting for the disk, so what follows from the numbers is found meanwhile. */
    private static Parts parts(
            Gathering gathered, Map<String, List<VersionSheet>> versions, Path cache, Draft draft, Progress progress)
            throws IOException {
        AtomicReference<Survey> survey = new AtomicReference<>();
        AtomicReference<List<Review>> reviews = new AtomicReference<>();
        AtomicReference<SitePictures> pictures = new AtomicReference<>();
        Abreast.run(List.of(
                () -> {
                    survey.set(Survey.of(gathered));
                    reviews.set(survey.get()
                            .reviews(e -> versions.getOrDefault(e.entry().slug(), List.of()))
                            .all());
                },
                () -> pictures.set(SitePictures.put(gathered, cache, draft, progress))));
        return new Parts(survey.get(), reviews.get(), pictures.get());
    }

    private static Outcome outcome(Gathering gathered, List<Problem> problems) {
        int files = gathered.entries().stream()
                .mapToInt(e -> e.entry().frames().size() + (e.entry().stack().isPresent() ? 1 : 0))
                .sum();
        files += images(gathered).size();
        return new Outcome(gathered.entries().size(), files, gathered.files().measuredNow(), false, problems);
    }

    /** Pictures are measured two at a time like frames, then compared one after the other. */
    private static Map<String, List<VersionSheet>> versions(Gathering gathered, Path root, Progress progress) {
        List<Path> images = images(gathered);
        gathered.files().measure(images, done -> {
            progress.at("measuring pictures", done, images.size());
            progress.measured(gathered.files().measuredNow());
        });
        VersionSheets sheets = new VersionSheets(gathered.files(), Places.cache(root));
        Map<String, List<VersionSheet>> all = new LinkedHashMap<>();
        int done = 0;
        for (EntrySheet sheet : gathered.entries()) {
            all.put(sheet.entry().slug(), sheets.of(sheet.entry()));
            progress.at("comparing versions", ++done, gathered.entries().size());
        }
        return all;
    }

    /** Pictures that the notes name and that cannot be read. */
    private static List<Problem> unreadable(Gathering gathered) {
        List<Problem> problems = new ArrayList<>();
        for (EntrySheet sheet : gathered.entries()) {
            for (Entry.Version version : sheet.entry().versions()) {
                version.image()
                        .filter(image -> !gathered.files().of(image).readable())
                        .ifPresent(image -> gathered.files().of(image).troubles().stream()
                                .map(t -> Problem.fault(
                                        sheet.entry().file(), "version " + version.name(), t.what(), t.hint()))
                                .forEach(problems::add));
            }
        }
        return problems;
    }

    private static List<Path> images(Gathering gathered) {
        return gathered.entries().stream()
                .flatMap(sheet -> sheet.entry().versions().stream())
                .flatMap(version -> version.image().stream())
                .distinct()
                .toList();
    }
}
