package noctuary.entry;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Lines of the file for places in a note's body, found without counting from the beginning each time. */
final class BodyLines {
    private final int firstLine;
    private final int[] ends;

    /** @param firstLine of the body in its file, from 1 */
    BodyLines(String body, int firstLine) {
        this.firstLine = firstLine;
        this.ends = ends(body);
    }

    private static int[] ends(String body) {
        return IntStream.range(0, body.length())
                .filter(i -> body.charAt(i) == '\n')
                .toArray();
    }

    /** @param offset of a character in the body */
    int at(int offset) {
        int found = Arrays.binarySearch(ends, offset);
        return firstLine + (found >= 0 ? found : -found - 1);
    }
}
