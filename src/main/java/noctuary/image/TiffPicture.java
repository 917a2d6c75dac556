package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads TIFF piece by piece, as many at a time as there are cores: of a piece, one row is in memory. */
final class TiffPicture {
    private static final int MOST_DIRECTORIES = 64;
    private static final int SMALLER_COPY = 1;

    private final TiffLayout layout;
    private final TiffBlocks blocks;
    private final TiffPixels pixels;

    private TiffPicture(TiffLayout layout, TiffBlocks blocks, TiffPixels pixels) {
        this.layout = layout;
        this.blocks = blocks;
        this.pixels = pixels;
    }

    /** Of the first picture that is no smaller copy of another. */
    static PictureImage read(Bytes file) throws IOException, UnreadablePictureException {
        TiffDirectory tags = directory(file);
        TiffLayout layout = TiffLayout.of(tags);
        TiffBlocks blocks = TiffBlocks.of(tags, layout, file);
        TiffPixels pixels = TiffPixels.of(tags, layout);
        return new TiffPicture(layout, blocks, pixels).decode();
    }

    static TiffDirectory directory(Bytes file) throws IOException {
        TiffDirectory first = TiffDirectory.first(file).orElseThrow(EOFException::new);
        Optional<TiffDirectory> next = Optional.of(first);
        for (int i = 0; i < MOST_DIRECTORIES && next.isPresent(); i++) {
            if ((next.get().number(254, 0) & SMALLER_COPY) == 0) {
                return next.get();
            }
            next = next.get().next();
        }
        return first;
    }

    /** The first piece that fails decides what is said, so that it is the same at every run. */
    private PictureImage decode() throws IOException {
        IntStream all = IntStream.range(0, layout.blocksAcross() * layout.blocksDown());
        Optional<IOException> failure = (pixels.oneAtATime() ? all : all.parallel())
                .mapToObj(this::failure)
                .filter(Objects::nonNull)
                .findFirst();
        if (failure.isPresent()) {
            throw failure.get();
        }
        return pixels.toPicture();
    }

    /** Null when all went well. */
    private IOException failure(int block) {
        try {
            decode(block);
            return null;
        } catch (IOException e) {
            return e;
        } catch (RuntimeException e) {
            return new IOException("a piece of it makes no sense", e);
        }
    }

    private void decode(int block) throws IOException {
        int x = block % layout.blocksAcross() * layout.blockWidth();
        int top = block / layout.blocksAcross() * layout.blockHeight();
        int count = Math.min(layout.blockWidth(), layout.width() - x);
        int bottom = Math.min(layout.height(), top + layout.blockHeight());
        RowSource rows = blocks.rows(block);
        for (int y = top; y < bottom; y++) {
            pixels.put(Run.of(x, y, count), rows.next());
        }
    }
}
