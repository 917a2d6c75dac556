package noctuary.image;

import java.io.IOException;

/** Rows of samples as a picture stores them, pixel after pixel. */
interface RowSource {
    /** The next row, which the next call may overwrite; samples of floating point as their bits. */
    int[] next() throws IOException;
}
