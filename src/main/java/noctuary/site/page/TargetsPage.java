package noctuary.site.page;

import java.util.List;

/** Every target. */
public record TargetsPage(Head head, List<Row> targets) {
    public TargetsPage {
        targets = List.copyOf(targets);
    }

    /** @param exposure empty when not known; {@code plate} null without a picture */
    public record Row(Link target, String attempts, String exposure, String span, Plate plate) {}
}
