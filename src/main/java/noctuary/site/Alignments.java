package noctuary.site;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.SkyMatch;
import noctuary.measure.TargetSheet;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;
import noctuary.site.page.TargetPage;

/**
 * Attempts brought to the scale of the reference attempt, and turned like it where the stars matched. It is the stack
 * that is shown, on which the stars were matched; a version's scale and orientation are the keeper's. The patch is the
 * smallest field among them, about the middle of each picture.
 */
final class Alignments {
    private final Ledger ledger;
    private final Address here;
    private final TargetSheet target;
    private final Plates plates;
    private final Optional<Sky> sky;
    private final double patchWidth;
    private final double patchHeight;

    Alignments(Ledger ledger, Address here, TargetSheet target) {
        this.ledger = ledger;
        this.here = here;
        this.target = target;
        this.plates = new Plates(ledger, here);
        this.sky = ledger.sky(target);
        this.patchWidth = smallest(false);
        this.patchHeight = smallest(true);
    }

    /** Size of the patch on the sky, when the reference's scale is known; else empty. */
    String patch() {
        OptionalDouble scale = ledger.entry(target.reference())
                .flatMap(sheet -> sheet.number(Figure.IMAGE_SCALE))
                .map(q -> OptionalDouble.of(q.value()))
                .orElse(OptionalDouble.empty());
        if (scale.isEmpty() || patchWidth == Double.MAX_VALUE) {
            return "";
        }
        return arcminutes(patchWidth * scale.getAsDouble()) + " × " + arcminutes(patchHeight * scale.getAsDouble());
    }

    /** Null without a picture. */
    TargetPage.View view(TargetSheet.Attempt attempt, EntrySheet sheet) {
        Optional<String> name = shown(sheet);
        if (name.isEmpty()) {
            return null;
        }
        Picture picture = ledger.pictures(sheet).get(name.get());
        double scale = scale(attempt, sheet).orElse(1);
        double width = picture.sourceWidth() * scale;
        double height = picture.sourceHeight() * scale;
        String path = picture.sizes().get(picture.sizes().size() - 1).path();
        return new TargetPage.View(
                here.to(path),
                here.to(path),
                plates.alternative(sheet, name.get()),
                viewBox(),
                number(patchWidth),
                number(patchHeight),
                name.get().equals(Plates.STACK) ? transform(attempt, width, height) : centred(width, height),
                number(width),
                number(height));
    }

    /** Whether the others are laid on it. */
    boolean isReference(TargetSheet.Attempt attempt) {
        return attempt.slug().equals(sky.map(Sky::reference).orElse(target.reference()));
    }

    /** How the picture came to its scale and orientation, in a sentence. */
    String laid(TargetSheet.Attempt attempt, EntrySheet sheet) {
        if (isReference(attempt)) {
            return "The reference: the others are brought to its scale and orientation.";
        }
        Optional<View> view = sky.stream()
                .flatMap(s -> s.views().stream())
                .filter(v -> v.slug().equals(attempt.slug()))
                .findFirst();
        if (view.isPresent()) {
            return laid(view.get());
        }
        if (!shown(sheet).equals(Optional.of(Plates.STACK))) {
            return shown(sheet).isPresent() ? "A finished version, neither turned nor measured." : "";
        }
        if (attempt.matched() > 0 && attempt.scale().isPresent()) {
            return "Laid on the reference by " + attempt.matched() + " stars.";
        }
        return scale(attempt, sheet).isPresent()
                ? "Its stars did not match the reference's: scale from the image scales, not turned."
                : "Its stars did not match the reference's and its scale is not known: shown as it is.";
    }

    private static String laid(View view) {
        SkyMatch match = view.match();
        return "Laid on the reference by " + match.matched() + " stars: scale " + Numerals.fixed(match.scale(), 4)
                + ", turned by " + Numerals.fixed(match.rotationDeg(), 2) + "°" + (match.mirrored() ? ", mirrored" : "")
                + ", residual " + Numerals.fixed(match.rmsPx(), 2) + " px."
                + (view.finished() ? " A finished picture, in its own stretch." : "");
    }

    private double smallest(boolean height) {
        return target.attempts().stream()
                .flatMap(attempt -> ledger.entry(attempt.slug()).stream()
                        .flatMap(sheet -> shown(sheet).stream()
                                .map(name -> ledger.pictures(sheet).get(name))
                                .map(p -> scale(attempt, sheet).orElse(1)
                                        * (height ? p.sourceHeight() : p.sourceWidth()))))
                .min(Double::compare)
                .orElse(Double.MAX_VALUE);
    }

    private Optional<String> shown(EntrySheet sheet) {
        return ledger.pictures(sheet).containsKey(Plates.STACK) ? Optional.of(Plates.STACK) : plates.face(sheet);
    }

    private OptionalDouble scale(TargetSheet.Attempt attempt, EntrySheet sheet) {
        if (attempt.scale().isPresent()) {
            return attempt.scale();
        }
        Optional<Double> own = sheet.number(Figure.IMAGE_SCALE).map(q -> q.value());
        Optional<Double> reference = ledger.entry(target.reference())
                .flatMap(s -> s.number(Figure.IMAGE_SCALE).map(q -> q.value()));
        return own.isPresent() && reference.isPresent()
                ? OptionalDouble.of(own.get() / reference.get())
                : OptionalDouble.empty();
    }

    private String viewBox() {
        return number(-patchWidth / 2) + " " + number(-patchHeight / 2) + " " + number(patchWidth) + " "
                + number(patchHeight);
    }

    /** Counter-clockwise as seen, since the pictures stand with +y up; SVG turns the other way. */
    private static String transform(TargetSheet.Attempt attempt, double width, double height) {
        String turn = attempt.rotationDeg().isPresent()
                ? "rotate(" + number(-attempt.rotationDeg().getAsDouble()) + ") "
                : "";
        String mirror = attempt.mirrored() ? "scale(-1 1) " : "";
        return turn + mirror + centred(width, height);
    }

    private static String centred(double width, double height) {
        return "translate(" + number(-width / 2) + " " + number(-height / 2) + ")";
    }

    private static String arcminutes(double arcsec) {
        return arcsec >= 3600 ? Numerals.fixed(arcsec / 3600, 2) + "°" : Numerals.fixed(arcsec / 60, 1) + "′";
    }

    private static String number(double value) {
        return Numerals.trimmed(value, 3).replace('\u2212', '-');
    }
}
