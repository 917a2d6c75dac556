package noctuary.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.site.page.EntryPage.FactGroup;
import noctuary.site.page.FactRow;

/** The fact sheet of an entry, in groups; every figure stands in one of them, known or not. */
final class FactGroups {
    private static final Set<Figure> LIGHT = EnumSet.of(Figure.EXPOSURE, Figure.GUIDING_RMS);
    private static final Set<Figure> STARS = EnumSet.of(
            Figure.FWHM_ARCSEC,
            Figure.FWHM_PX,
            Figure.ELLIPTICITY,
            Figure.HALF_FLUX_RADIUS,
            Figure.STARS,
            Figure.SAMPLING);
    private static final Set<Figure> OPTICS = EnumSet.of(
            Figure.IMAGE_SCALE,
            Figure.FIELD_WIDTH,
            Figure.FIELD_HEIGHT,
            Figure.FOCAL_LENGTH,
            Figure.FOCAL_RATIO,
            Figure.PIXEL_PITCH);

    private static final Set<Figure> FIELD = EnumSet.range(Figure.CENTRE_FWHM, Figure.FIELD_CURVATURE);
    private static final Set<Figure> DEFECTS = EnumSet.range(Figure.HOT_PIXELS, Figure.CORNER_GLOW);

    private final Facts facts;
    private final EntrySheet sheet;

    FactGroups(Facts facts, EntrySheet sheet) {
        this.facts = facts;
        this.sheet = sheet;
    }

    List<FactGroup> all() {
        List<FactRow> light = new ArrayList<>();
        light.add(facts.row("target", "Target", sheet.target(), name -> name));
        light.add(facts.row("night", "Night", sheet.night(), Dates::reading));
        light.addAll(rows(LIGHT));
        Set<Figure> rest = EnumSet.allOf(Figure.class);
        List.of(LIGHT, STARS, OPTICS, FIELD, DEFECTS).forEach(rest::removeAll);
        return List.of(
                new FactGroup("Light", light),
                new FactGroup("Stars", rows(STARS)),
                new FactGroup("Optics", rows(OPTICS)),
                new FactGroup("Sky and sensor", rows(rest)),
                new FactGroup("Sharpness across the field", rows(FIELD)),
                new FactGroup("Defects", rows(DEFECTS)));
    }

    private List<FactRow> rows(Set<Figure> figures) {
        return Arrays.stream(Figure.values())
                .filter(figures::contains)
                .map(figure -> facts.quantity(figure.id(), label(figure), sheet.figure(figure)))
                .toList();
    }

    private static String label(Figure figure) {
        return figure == Figure.FWHM_PX ? figure.label() + " in pixels" : figure.label();
    }
}
