package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import noctuary.site.SiteContent.CutStar;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;

/** All attempts on a target on one grid, to be laid side by side. Safe for several threads. */
final class SameSky {
    private static final String KIND = "skies";

    private final Path cache;
    private final Path output;
    private final MeasuredFiles files;
    private final Memo memo;
    private final SkyMatches matches;

    SameSky(Path cache, Path output, MeasuredFiles files, Memo memo) {
        this.cache = cache;
        this.output = output;
        this.files = files;
        this.memo = memo;
        this.matches = new SkyMatches(memo);
    }

    /** @param files places in the cache by places in the site */
    private record Shown(Optional<Sky> sky, Map<String, String> files) {
        static final Packing<Shown> PACKING = Packing.of(Shown.class);
    }

    /** Nothing for a target with fewer than two attempts that can be shown. */
    Optional<Sky> of(TargetSheet target, Map<String, EntrySheet> entries) throws IOException {
        String key = key(target, entries);
        Optional<Shown> before = memo.find(KIND, Shown.PACKING, key);
        return before.isPresent() && placedAgain(before.get()) ? before.get().sky() : made(target, entries, key);
    }

    private boolean placedAgain(Shown before) {
        try {
            new Placing(cache, output).again(before.files());
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
        Placing site = new Placing(cache, output);
        Optional<Sky> sky = laid(target, entries, site);
        memo.keep(KIND, Shown.PACKING, key, new Shown(sky, site.placed()));
        return sky;
    }

    private Optional<Sky> laid(TargetSheet target, Map<String, EntrySheet> entries, Placing site) throws IOException {
        List<SkyAttempt> attempts = SkyAttempt.of(target, entries, files);
        if (attempts.size() < 2) {
            return Optional.empty();
        }
        SkyFrame frame = frame(target, attempts);
        List<View> views = frame.laid().size() < 2 ? List.of() : views(target.id(), frame, site);
        return Optional.of(new Sky(
                frame.reference().slug(),
                frame.grid().width(),
                frame.grid().height(),
                Math.sqrt(frame.grid().toReference().area()),
                frame.northUp(),
                views,
                frame.whyNot()));
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

    private List<View> views(String target, SkyFrame frame, Placing site) throws IOException {
        SkyShelf shelf = new SkyShelf(cache, target, frame);
        try {
            return views(target, frame, shelf, site);
        } catch (IOException | RuntimeException missingOrDamaged) {
            shelf.fill();
            return views(target, frame, shelf, site);
        }
    }

    private List<View> views(String target, SkyFrame frame, SkyShelf shelf, Placing site) throws IOException {
        String folder = "targets/" + target + "/sky";
        List<View> views = new ArrayList<>();
        for (Map.Entry<SkyAttempt, SkyMatch> each : frame.laid().entrySet()) {
            SkyAttempt attempt = each.getKey();
            String slug = attempt.slug();
            Optional<Picture> alike = shelf.hasAlike(attempt)
                    ? Optional.of(shelf.alike(attempt).put(site, folder, slug + "-alike"))
                    : Optional.empty();
            Picture own = shelf.own(attempt).put(site, folder, slug + "-own");
            views.add(new View(
                    slug, each.getValue(), attempt.finished(), alike, own, stars(attempt, shelf, folder, site)));
        }
        return views;
    }

    private List<CutStar> stars(SkyAttempt attempt, SkyShelf shelf, String folder, Placing site) throws IOException {
        List<CutStar> stars = new ArrayList<>();
        List<Optional<SampleStars.Sample>> samples = SampleStars.of(attempt.measurement());
        for (int i = 0; i < samples.size(); i++) {
            String place = StarCuts.place(SampleStars.Place.values()[i], attempt.finished());
            Optional<SampleStars.Sample> sample = samples.get(i);
            String path = folder + "/" + attempt.slug() + "-star-" + i + ".jpg";
            if (sample.isPresent()) {
                shelf.putStar(attempt, i, site, path);
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
