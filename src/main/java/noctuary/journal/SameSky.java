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
import noctuary.measure.SkyMatches;
import noctuary.measure.SkyReference;
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
    private final SkyMatches matches;

    SameSky(Path cache, Path output, MeasuredFiles files, SkyMatches matches) {
        this.matches = matches;
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
                    ? Optional.of(shelf.alike(attempt).put(output, folder, slug + "-alike"))
                    : Optional.empty();
            Picture own = shelf.own(attempt).put(output, folder, slug + "-own");
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
                shelf.putStar(attempt, i, output.resolve(path));
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
