package noctuary.match;

import java.util.Arrays;

/** Numbers in the order they were added, without a box around each. */
final class IntList {
    private int[] values = new int[1024];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int get(int i) {
        return values[i];
    }

    int size() {
        return size;
    }
}
