package noctuary.site.page;

import java.util.List;

/**
 * What a version's steps cost and gained.
 *
 * @param whyNot a reason when nothing could be compared, and then the rest is empty
 * @param how the two were laid on one another and brought under one stretch
 * @param method where it is explained
 */
public record VersionEffect(
        String whyNot, List<Finding> findings, List<Figure> figures, List<Fate> fates, String how, Link method) {
    public VersionEffect {
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
        fates = List.copyOf(fates);
    }

    public record Finding(String text, String evidence) {}

    /** @param value empty where absent; {@code why} says why then */
    public record Figure(String label, String value, String why) {}

    /** Stars of one range of brightness. */
    public record Fate(String brightness, int stars, int lost, String share) {}
}
