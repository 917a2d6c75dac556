package noctuary.fits;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import noctuary.image.Plane;

/** Reads the pixels of a found image, from the file itself or, for compressed tiles, by way of the FITS library. */
final class ImageReader {
    /** Small enough that a piece is still in the processor's cache when it is decoded after being summed. */
    private static final int PIECE = 1 << 18;

    private final ByteSource source;
    private final ImageFinder.Found found;
    private final Structure structure;
    private final CardIndex index;
    private final Shape shape;
    private final PlaneFiller filler;
    private final PixelDigest digest;
    private long missingPadding;
    private final FitsChecksum checksum = new FitsChecksum();

    ImageReader(ByteSource source, ImageFinder.Found found) throws UnreadableException {
        this.source = source;
        this.found = found;
        structure = found.unit().structure();
        index = new CardIndex(found.cards());
        shape = Shape.of(structure.axes());
        Scaling scaling = Scaling.of(index, structure.bitpix());
        filler = new PlaneFiller(shape, scaling, structure.bitpix());
        digest = new PixelDigest(shape, scaling, structure.bitpix());
    }

    FitsImage read() throws IOException, UnreadableException {
        boolean summed = FitsChecksum.isAskedFor(new CardIndex(found.unit().cards()));
        if (structure.tiled()) {
            readTiles();
        } else {
            readArray(summed);
        }
        if (summed) {
            checksum.judge(index, found.unit().headerBytes());
        }
        List<FrameHeader.Oddity> oddities = new ArrayList<>(found.oddities());
        if (shape.partial()) {
            oddities.add(new FrameHeader.Oddity(
                    "NAXIS", "the image is a cube; its first plane is used", "three planes are read as colours"));
        }
        oddities.addAll(Afterwards.look(source, missingPadding));
        List<Plane> planes = filler.planes();
        LostOffset.look(index, structure, planes);
        FrameHeader header = HeaderReader.read(index, shape.width(), shape.height(), oddities);
        return new FitsImage(found.cards(), header, planes, structure.bitpix(), digest.hex());
    }

    private void readArray(boolean summed) throws IOException, UnreadableException {
        long wanted = shape.values() * (Math.abs(structure.bitpix()) / 8);
        long padded = found.unit().paddedBytes();
        long end = summed ? padded : wanted;
        long done = 0;
        while (done < end) {
            ByteBuffer piece = source.next((int) Math.min(PIECE, end - done));
            if (!piece.hasRemaining()) {
                break;
            }
            if (summed) {
                checksum.accept(piece);
            }
            int length = piece.remaining();
            take(piece.limit((int) Math.max(0, Math.min(length, wanted - done))));
            done += length;
        }
        if (done < wanted) {
            throw ImageFinder.truncated(structure, done);
        }
        missingPadding = padded - done - source.skip(padded - done);
    }

    private void take(ByteBuffer piece) {
        if (!filler.isFull()) {
            digest.accept(piece);
            filler.accept(piece);
        }
    }

    private void readTiles() throws IOException, UnreadableException {
        DataStream data = new DataStream(source, found.unit().paddedBytes(), checksum);
        Object array = TileLibrary.decompress(found.unit().cards(), data);
        data.drain();
        new StoredBytes(this::take).send(array);
        if (!filler.isFull()) {
            throw new UnreadableException("holds fewer compressed pixels than its header claims", Hdu.COPY_AGAIN);
        }
    }
}
