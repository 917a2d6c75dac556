package noctuary.image;

/**
 * Some pixels of one stored row.
 *
 * @param x of the first
 * @param step from each to the next
 */
record Run(int x, int y, int step, int count) {
    static Run of(int x, int y, int count) {
        return new Run(x, y, 1, count);
    }
}
