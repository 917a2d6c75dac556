package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import noctuary.measure.EntrySheet;
import noctuary.measure.ShownFile;
import noctuary.measure.TargetSheet;
import noctuary.measure.VersionSheet;
import noctuary.measure.VersionSheets;
import noctuary.site.DrawnEntry;
import noctuary.site.Former;
import noctuary.site.SiteContent;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteWriter;

/** A journal to its site. */
public final class Rendering {
    private Rendering() {}

    /**
     * @param files frames, stacks and pictures looked at
     * @param measuredNow of these, the ones that were not in the cache
     * @param standing whether nothing had changed, so that the site was left as it stands
     */
    public record Outcome(int entries, int files, int measuredNow, boolean standing, List<Problem> problems) {}

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
                Optional<Outcome> reworded = render.reworded(before.get());
                if (reworded.isPresent()) {
                    return reworded.get();
                }
            }
            ShownFiles shown = ShownFiles.of(root, output);
            Former former = before.isPresent() ? shown.find() : Former.none();
            Site site = alone(root, output, render.looks(), former, progress);
            shown.keep(former);
            render.keep(site.journal(), site.entries(), site.outcome());
            return site.outcome();
        } finally {
            turn.end();
        }
    }

    private record Site(Journal journal, List<DrawnEntry> entries, Outcome outcome) {}

    private static Site alone(Path root, Path output, Branches looks, Former former, Progress progress)
            throws IOException, RefusedException {
        Publication publication = Publication.begin(root, output);
        try {
            Survey survey = Survey.of(root, looks, progress);
            Path draft = publication.draft();
            Map<String, List<VersionSheet>> versions = versions(survey, root, progress);
            Attachments.Published attached = Attachments.publish(survey.journal(), draft, former);
            SiteContent content = new SiteContent(
                    survey.journal(),
                    survey.entries(),
                    survey.rigs(),
                    survey.targets(),
                    survey.reviews(e -> versions.getOrDefault(e.entry().slug(), List.of()))
                            .all(),
                    survey.advice(),
                    pictures(survey, new PictureShelf(Places.cache(root), draft, survey.files()), progress),
                    versions,
                    skies(survey, new SameSky(Places.cache(root), draft, survey.files(), survey.memo()), progress),
                    attached.unshown());
            List<DrawnEntry> drawn = SiteWriter.write(content, Places.ownTemplates(root), draft, former, survey.memo());
            List<Problem> problems = new ArrayList<>(survey.problems());
            problems.addAll(unreadable(survey));
            problems.addAll(attached.problems());
            publication.publish();
            survey.memo().save();
            int files = survey.entries().stream()
                    .mapToInt(
                            e -> e.entry().frames().size() + (e.entry().stack().isPresent() ? 1 : 0))
                    .sum();
            files += images(survey).size();
            return new Site(
                    survey.journal(),
                    drawn,
                    new Outcome(survey.entries().size(), files, survey.files().measuredNow(), false, problems));
        } finally {
            publication.abandon();
        }
    }

    /** Pictures are measured two at a time like frames, then compared one after the other. */
    private static Map<String, List<VersionSheet>> versions(Survey survey, Path root, Progress progress) {
        List<Path> images = images(survey);
        survey.files().measure(images, done -> {
            progress.at("measuring pictures", done, images.size());
            progress.measured(survey.files().measuredNow());
        });
        VersionSheets sheets = new VersionSheets(survey.files(), Places.cache(root));
        Map<String, List<VersionSheet>> all = new LinkedHashMap<>();
        int done = 0;
        for (EntrySheet sheet : survey.entries()) {
            all.put(sheet.entry().slug(), sheets.of(sheet.entry()));
            progress.at("comparing versions", ++done, survey.entries().size());
        }
        return all;
    }

    /** Pictures that the notes name and that cannot be read. */
    private static List<Problem> unreadable(Survey survey) {
        List<Problem> problems = new ArrayList<>();
        for (EntrySheet sheet : survey.entries()) {
            for (Entry.Version version : sheet.entry().versions()) {
                version.image()
                        .filter(image -> !survey.files().of(image).readable())
                        .ifPresent(image -> survey.files().of(image).troubles().stream()
                                .map(t -> Problem.fault(
                                        sheet.entry().file(), "version " + version.name(), t.what(), t.hint()))
                                .forEach(problems::add));
            }
        }
        return problems;
    }

    private static List<Path> images(Survey survey) {
        return survey.entries().stream()
                .flatMap(sheet -> sheet.entry().versions().stream())
                .flatMap(version -> version.image().stream())
                .distinct()
                .toList();
    }

    private static Map<String, Map<String, Picture>> pictures(Survey survey, PictureShelf shelf, Progress progress)
            throws IOException {
        Map<String, Map<String, Picture>> all = new LinkedHashMap<>();
        int done = 0;
        for (EntrySheet sheet : survey.entries()) {
            all.put(sheet.entry().slug(), pictures(sheet, shelf));
            progress.at("drawing", ++done, survey.entries().size());
        }
        return all;
    }

    private static Map<String, Picture> pictures(EntrySheet sheet, PictureShelf shelf) throws IOException {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        Entry entry = sheet.entry();
        String folder = "entries/" + entry.slug();
        if (sheet.shownFile().isPresent()) {
            ShownFile shown = sheet.shownFile().get();
            put(
                    pictures,
                    "stack",
                    shown.content().isEmpty()
                            ? shelf.show(shown.path(), folder, "stack")
                            : shelf.show(shown.path(), shown.content(), folder, "stack"));
        }
        int n = 0;
        for (Entry.Version version : entry.versions()) {
            n++;
            if (version.image().isPresent()) {
                put(pictures, version.name(), shelf.show(version.image().get(), folder, "version-" + n));
            }
        }
        return pictures;
    }

    private static Map<String, Sky> skies(Survey survey, SameSky sameSky, Progress progress) throws IOException {
        Map<String, EntrySheet> entries = new LinkedHashMap<>();
        survey.entries().forEach(sheet -> entries.put(sheet.entry().slug(), sheet));
        Map<String, Sky> skies = new LinkedHashMap<>();
        int done = 0;
        for (TargetSheet target : survey.targets()) {
            Optional<Sky> sky = sameSky.of(target, entries);
            sky.ifPresent(s -> skies.put(target.id(), s));
            progress.at(
                    "laying attempts on each other", ++done, survey.targets().size());
        }
        return skies;
    }

    private static void put(Map<String, Picture> pictures, String name, Optional<Picture> picture) {
        picture.ifPresent(p -> pictures.put(name, p));
    }
}
