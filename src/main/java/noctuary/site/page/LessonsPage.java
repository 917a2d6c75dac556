package noctuary.site.page;

import java.util.List;

/** All lessons, open ones apart. @param sheet for the next night */
public record LessonsPage(Head head, Link sheet, List<Row> open, List<Row> closed) {
    public LessonsPage {
        open = List.copyOf(open);
        closed = List.copyOf(closed);
    }

    /** @param closedBy without a way while open */
    public record Row(
            String about,
            String todo,
            Link openedBy,
            String opened,
            Link closedBy,
            String closed,
            List<Link> seenAgain) {
        public Row {
            seenAgain = List.copyOf(seenAgain);
        }
    }
}
