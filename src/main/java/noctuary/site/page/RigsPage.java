package noctuary.site.page;

import java.util.List;

/** Every rig. */
public record RigsPage(Head head, List<Row> rigs) {
    public RigsPage {
        rigs = List.copyOf(rigs);
    }

    public record Row(Link rig, String use, List<Labelled> figures, int entries, int warnings) {}
}
