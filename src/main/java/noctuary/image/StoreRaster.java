package noctuary.image;

import java.awt.Point;
import java.awt.image.BandedSampleModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/** Looks like a raster to ImageIO and keeps nothing: rows that are set go into a store. */
final class StoreRaster extends WritableRaster {
    private final PictureStore store;

    StoreRaster(int width, int height, int bands, PictureStore store) {
        super(
                new BandedSampleModel(DataBuffer.TYPE_BYTE, width, height, bands),
                new DataBufferByte(1, bands),
                new Point());
        this.store = store;
    }

    @Override
    public void setRect(int dx, int dy, Raster rows) {
        int count = rows.getWidth();
        int bands = rows.getNumBands();
        int[] row = null;
        for (int y = 0; y < rows.getHeight(); y++) {
            row = rows.getPixels(rows.getMinX(), rows.getMinY() + y, count, 1, row);
            for (int p = 0; p < bands; p++) {
                store.put(Run.of(dx + rows.getMinX(), dy + rows.getMinY() + y, count), p, row, p, bands);
            }
        }
    }
}
