package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/** Areas of a drawing already taken, so that words are only put where they can be read. */
final class Spots {
    record Area(double left, double top, double right, double bottom) {
        /** Where a line of text stands whose baseline begins, centres or ends at a point. */
        static Area ofText(Anchor anchor, double x, double baseline, double width) {
            double from = anchor.from(x, width);
            return new Area(from, baseline - 12, from + width, baseline + 4);
        }

        boolean meets(Area other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }
    }

    private final List<Area> taken = new ArrayList<>();

    void take(Area area) {
        taken.add(area);
    }

    boolean isFree(Area area) {
        return taken.stream().noneMatch(area::meets);
    }
}
