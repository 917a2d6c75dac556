package noctuary.entry;

import java.util.List;

/** Front matter as a tree in which every key and value knows its line in the file, from 1. */
sealed interface Node {
    int line();

    /** @param blank nothing was typed, or {@code null} or {@code ~} */
    record Scalar(String text, boolean blank, int line) implements Node {}

    record Sequence(List<Node> items, int line) implements Node {}

    /** @param whole false when the text broke off inside, so that keys may be missing through no fault of the keeper */
    record Mapping(List<Pair> pairs, int line, boolean whole) implements Node {}

    record Pair(String key, int line, Node value) {}
}
