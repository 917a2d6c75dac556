package noctuary.draw;

import java.util.List;
import noctuary.image.Plane;

/** A canvas whose rows come from somewhere. */
record RowCanvas(int width, int height, float white, Source source) implements Canvas {
    RowCanvas(Plane like, float white, Source source) {
        this(like.width(), like.height(), white, source);
    }

    @FunctionalInterface
    interface Source {
        List<Plane> rows(int top, int count);
    }

    @Override
    public List<Plane> rows(int top, int count) {
        return source.rows(top, count);
    }
}
