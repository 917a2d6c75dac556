package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.measure.EntrySheet;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.SampleStars;
import noctuary.measure.SkyMatch;
import noctuary.measure.TargetSheet;
import noctuary.site.SiteContent.CutStar;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;

/** All attempts on a target on one grid, to be laid side by side. */
final class SameSky {
    private final Path cache;
    private final Path output;
    private final MeasuredFiles files;

    SameSky(Path cache, Path output, MeasuredFiles files) {
        this.cache = cache;
        this.output = output;
        this.files = files;
    }

    /** Nothing for a target with fewer than two attempts that can be shown. */
    Optional<Sky> of(TargetSheet target, Map<String, EntrySheet> entries) throws IOException {
        List<SkyAttempt> attempts = SkyAttempt.of(target, entries, files);
        if (attempts.size() < 2) {
            return Optional.empty();
        }
        SkyFrame frame = frame(target, attempts);
        List<View> views = frame.laid().size() < 2 ? List.of() : views(target.id(), frame);
        return Optional.of(new Sky(
                frame.reference().slug(),
                frame.grid().width(),
                frame.grid().height(),
                Math.sqrt(frame.grid().toReference().area()),
                frame.northUp(),
                views,
                frame.whyNot()));
    }

    /**
     * On the target's reference attempt, unless more than half of the others cannot be laid on it: it may be the one that
     * shows something else, and then the attempt that most others can be laid on takes its place.
     */
    private static SkyFrame frame(TargetSheet target, List<SkyAttempt> attempts) {
        List<SkyAttempt> candidates = new ArrayList<>(attempts);
        candidates.sort(Comparator.comparing((SkyAttempt a) -> !a.slug().equals(target.reference()))
                .thenComparing(a -> -SkyMatch.itself(a.measurement()).matched()));
        SkyFrame best = null;
        for (SkyAttempt candidate : candidates) {
            SkyFrame frame = SkyFrame.of(attempts, candidate);
            if (best == null || frame.laid().size() > best.laid().size()) {
                best = frame;
            }
            if (2 * (best.laid().size() - 1) >= attempts.size() - 1) {
                break;
            }
        }
        return best;
    }

    private List<View> views(String target, SkyFrame frame) throws IOException {
        SkyShelf shelf = new SkyShelf(cache, target, frame);
        try {
            return views(target, frame, shelf);
        } catch (IOException | RuntimeException missingOrDamaged) {
            shelf.fill();
            return views(target, frame, shelf);
        }
    }

    private List<View> views(String target, SkyFrame frame, SkyShelf shelf) throws IOException {
        String folder = "targets/" + target + "/sky";
        List<View> views = new ArrayList<>();
        for (Map.Entry<SkyAttempt, SkyMatch> each : frame.laid().entrySet()) {
            SkyAttempt attempt = each.getKey();
            String slug = attempt.slug();
            Optional<Picture> alike = shelf.hasAlike(attempt)
                    ? Optional.of(shelf.alike(attempt).copy(output, folder, slug + "-alike"))
                    : Optional.empty();
            Picture own = shelf.own(attempt).copy(output, folder, slug + "-own");
            views.add(new View(slug, each.getValue(), attempt.finished(), alike, own, stars(attempt, shelf, folder)));
        }
        return views;
    }

    private List<CutStar> stars(SkyAttempt attempt, SkyShelf shelf, String folder) throws IOException {
        List<CutStar> stars = new ArrayList<>();
        List<Optional<SampleStars.Sample>> samples = SampleStars.of(attempt.measurement());
        for (int i = 0; i < samples.size(); i++) {
            String place = StarCuts.place(SampleStars.Place.values()[i], attempt.finished());
            Optional<SampleStars.Sample> sample = samples.get(i);
            String path = folder + "/" + attempt.slug() + "-star-" + i + ".jpg";
            if (sample.isPresent()) {
                shelf.copyStar(attempt, i, output.resolve(path));
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
