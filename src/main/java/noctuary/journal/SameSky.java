package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.entry.Entry;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.measure.EntrySheet;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.SampleStars;
import noctuary.measure.ShownFile;
import noctuary.measure.SkyMatch;
import noctuary.measure.SkyMatches;
import noctuary.measure.SkyReference;
import noctuary.measure.TargetSheet;
import noctuary.site.Draft;
import noctuary.site.SiteContent.CutStar;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;

/** All attempts on a target on one grid, to be laid side by side. Safe for several threads. */
final class SameSky {
    private static final String KIND = "skies";

    private final Path cache;
    private final Draft draft;
    private final MeasuredFiles files;
    private final Memo memo;
    private final SkyMatches matches;

    SameSky(Path cache, Draft draft, MeasuredFiles files, Memo memo) {
        this.cache = cache;
        this.draft = draft;
        this.files = files;
        this.memo = memo;
        this.matches = new SkyMatches(memo);
    }

    /** @param files places in the cache by places in the site */
    private record Shown(Optional<Sky> sky, Map<String, String> files) {
        static final Packing<Shown> PACKING = Packing.of(Shown.class);
    }

    /** @param files as in {@link Shown} */
    private record Views(List<View> views, Map<String, String> files) {}

    /** Nothing for a target with fewer than two attempts that can be shown. */
    Optional<Sky> of(TargetSheet target, Map<String, EntrySheet> entries) throws IOException {
        String key = key(target, entries);
        Optional<Shown> before = memo.find(KIND, Shown.PACKING, key);
        return before.isPresent() && placedAgain(target, before.get())
                ? before.get().sky()
                : made(target, entries, key);
    }

    private Placing placing(TargetSheet target) {
        return new Placing(cache, draft, folder(target));
    }

    private static String folder(TargetSheet target) {
        return "targets/" + target.id() + "/sky";
    }

    private boolean placedAgain(TargetSheet target, Shown before) {
        try {
            placing(target).again(new TreeMap<>(before.files()));
            return true;
        } catch (IOException missing) {
            return false;
        }
    }

    /** Empty where a file has no identity. */
    private String key(TargetSheet target, Map<String, EntrySheet> entries) {
        Digest digest =
                new Digest().text(SkyShelf.ENGINE + "-" + PictureShelf.ENGINE).text(target.toString());
        for (TargetSheet.Attempt attempt : target.attempts()) {
            Optional<EntrySheet> sheet = Optional.ofNullable(entries.get(attempt.slug()));
            Optional<ShownFile> shown = sheet.flatMap(EntrySheet::shownFile);
            if (shown.filter(file -> file.content().isEmpty()).isPresent()) {
                return "";
            }
            digest.text(shown.map(ShownFile::toString).orElse(""));
            sheet.filter(s -> shown.isEmpty()).ifPresent(s -> pictures(digest, s.entry()));
        }
        return digest.hex();
    }

    private void pictures(Digest digest, Entry entry) {
        entry.versions().stream()
                .flatMap(version -> version.image().stream())
                .forEach(image ->
                        digest.text(image.toString()).text(files.digest(image).orElse("")));
    }

    /** One at a time: the pictures of two targets may not fit into memory together. */
    private synchronized Optional<Sky> made(TargetSheet target, Map<String, EntrySheet> entries, String key)
            throws IOException {
        List<SkyAttempt> attempts = SkyAttempt.of(target, entries, files);
        Shown shown = attempts.size() < 2 ? new Shown(Optional.empty(), Map.of()) : laid(target, attempts);
        memo.keep(KIND, Shown.PACKING, key, shown);
        return shown.sky();
    }

    private Shown laid(TargetSheet target, List<SkyAttempt> attempts) throws IOException {
        SkyFrame frame = frame(target, attempts);
        Views views = frame.laid().size() < 2 ? new Views(List.of(), Map.of()) : views(target, frame);
        Sky sky = new Sky(
                frame.reference().slug(),
                frame.grid().width(),
                frame.grid().height(),
                Math.sqrt(frame.grid().toReference().area()),
                frame.northUp(),
                views.views(),
                frame.whyNot());
        return new Shown(Optional.of(sky), views.files());
    }

    /** On the target's reference attempt; where that shows no stars of its own, on one that is chosen alike. */
    private SkyFrame frame(TargetSheet target, List<SkyAttempt> attempts) {
        List<SkyAttempt> candidates = attempts.stream()
                .sorted(Comparator.comparingInt(attempt -> -stars(attempt)))
                .toList();
        Optional<SkyAttempt> reference = attempts.stream()
                .filter(a -> a.slug().equals(target.reference()) && !a.finished() && stars(a) > 0)
                .findFirst()
                .or(() -> SkyReference.choose(candidates, candidate -> laidOn(candidate, attempts)));
        return SkyFrame.of(attempts, reference.orElseThrow(), matches);
    }

    private static int stars(SkyAttempt attempt) {
        return SkyMatch.itself(attempt.measurement()).matched();
    }

    private int laidOn(SkyAttempt reference, List<SkyAttempt> attempts) {
        return (int) attempts.stream()
                .filter(a -> a != reference
                        && matches.of(a.measurement(), reference.measurement()).isPresent())
                .count();
    }

    private Views views(TargetSheet target, SkyFrame frame) throws IOException {
        SkyShelf shelf = new SkyShelf(cache, target.id(), frame);
        try {
            return views(target, frame, shelf);
        } catch (IOException | RuntimeException missingOrDamaged) {
            shelf.fill();
            return views(target, frame, shelf);
        }
    }

    private Views views(TargetSheet target, SkyFrame frame, SkyShelf shelf) throws IOException {
        Placing site = placing(target);
        List<View> views = views(frame, shelf, folder(target), site);
        site.place();
        return new Views(views, site.placed());
    }

    private List<View> views(SkyFrame frame, SkyShelf shelf, String folder, Placing site) throws IOException {
        List<View> views = new ArrayList<>();
        for (Map.Entry<SkyAttempt, SkyMatch> each : frame.laid().entrySet()) {
            SkyAttempt attempt = each.getKey();
            String slug = attempt.slug();
            Optional<Picture> alike = shelf.hasAlike(attempt)
                    ? Optional.of(shelf.alike(attempt).add(site, folder, slug + "-alike"))
                    : Optional.empty();
            Picture own = shelf.own(attempt).add(site, folder, slug + "-own");
            views.add(new View(
                    slug, each.getValue(), attempt.finished(), alike, own, stars(attempt, shelf, folder, site)));
        }
        return views;
    }

    private List<CutStar> stars(SkyAttempt attempt, SkyShelf shelf, String folder, Placing site) {
        List<CutStar> stars = new ArrayList<>();
        List<Optional<SampleStars.Sample>> samples = SampleStars.of(attempt.measurement());
        for (int i = 0; i < samples.size(); i++) {
            String place = StarCuts.place(SampleStars.Place.values()[i], attempt.finished());
            Optional<SampleStars.Sample> sample = samples.get(i);
            String path = folder + "/" + attempt.slug() + "-star-" + i + ".jpg";
            if (sample.isPresent()) {
                shelf.addStar(attempt, i, site, path);
            }
            stars.add(new CutStar(
                    place,
                    sample.isPresent() ? path : "",
                    StarCuts.SIDE,
                    sample.map(SampleStars.Sample::fwhmPx).orElse(Double.NaN),
                    sample.map(SampleStars.Sample::ellipticity).orElse(Double.NaN)));
        }
        stars.sort(Comparator.comparingInt(star -> StarCuts.PLACES.indexOf(star.place())));
        return stars;
    }
}
