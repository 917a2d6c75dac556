package noctuary.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.fits.SkyPlane;
import noctuary.image.Affine;
import noctuary.image.SharedGrid;
import noctuary.measure.Measurement;
import noctuary.measure.SkyMatch;
import noctuary.measure.SkyMatches;

/**
 * Which attempts can be laid on the reference, and the grid for them.
 *
 * @param laid attempts with their match, oldest first, the reference among them
 * @param whyNot by slug, for the others
 */
record SkyFrame(
        SkyAttempt reference,
        Map<SkyAttempt, SkyMatch> laid,
        Map<String, String> whyNot,
        SharedGrid grid,
        boolean northUp) {

    static SkyFrame of(List<SkyAttempt> attempts, SkyAttempt reference, SkyMatches matches) {
        Map<SkyAttempt, SkyMatch> laid = new LinkedHashMap<>();
        Map<String, String> whyNot = new LinkedHashMap<>();
        for (SkyAttempt attempt : attempts) {
            Optional<SkyMatch> match = attempt == reference
                    ? Optional.of(SkyMatch.itself(reference.measurement()))
                    : matches.of(attempt.measurement(), reference.measurement());
            match.ifPresentOrElse(
                    m -> laid.put(attempt, m),
                    () -> whyNot.put(attempt.slug(), SkyMatch.whyNot(attempt.measurement(), reference.measurement())));
        }
        Optional<Affine> north = north(reference.measurement());
        Affine screen = north.orElse(reference.finished() ? Affine.SAME : new Affine(1, 0, 0, 0, -1, 0));
        return new SkyFrame(
                reference, laid, whyNot, SharedGrid.of(outlines(laid, reference), screen), north.isPresent());
    }

    private static List<SharedGrid.Laid> outlines(Map<SkyAttempt, SkyMatch> laid, SkyAttempt reference) {
        List<SharedGrid.Laid> outlines = new ArrayList<>();
        outlines.add(outline(reference.measurement(), Affine.SAME));
        laid.forEach((attempt, match) -> outlines.add(outline(attempt.measurement(), match.toReference())));
        return outlines;
    }

    private static SharedGrid.Laid outline(Measurement file, Affine toReference) {
        return new SharedGrid.Laid(toReference, file.width(), file.height());
    }

    /** North up and east to the left, where the reference's header has world coordinates. */
    private static Optional<Affine> north(Measurement reference) {
        return reference.header().flatMap(h -> h.sky()).map(cited -> screen(cited.value()));
    }

    /** The position angle counts from north through east: against the clock where x runs west, else with it. */
    static Affine screen(SkyPlane sky) {
        double angle = Math.toRadians(sky.rotationDeg());
        double way = sky.mirrored() ? -1 : 1;
        double northX = way * Math.sin(angle);
        double northY = Math.cos(angle);
        double westX = way * northY;
        double westY = -way * northX;
        return new Affine(westX, -northX, 0, westY, -northY, 0);
    }
}
