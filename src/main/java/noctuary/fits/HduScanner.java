package noctuary.fits;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds header-data units one after the other, believing nothing that has not been checked. */
final class HduScanner {
    static final int BLOCK = 2880;
    private static final int MOST_BLOCKS = 1000;
    private static final int MOST_BLOCKS_OF_ALL = 4000;
    private static final int MOST_UNITS = 1000;

    private final ByteSource source;
    private int units;
    private int blocks;

    HduScanner(ByteSource source) {
        this.source = source;
    }

    /**
     * The next unit, the source then standing at its data; empty at the end of the file, or where what follows is no
     * extension.
     */
    Optional<Hdu> next() throws IOException, UnreadableException {
        ByteBuffer first = source.next(BLOCK);
        String start = units == 0 ? "SIMPLE" : "XTENSION";
        byte[] block = bytes(first);
        if (block.length < CardReader.CARD
                || units++ >= MOST_UNITS
                || !text(block).startsWith(start)) {
            return Optional.empty();
        }
        ByteArrayOutputStream header = new ByteArrayOutputStream(4 * BLOCK);
        List<String> records = new ArrayList<>();
        boolean ended = false;
        while (!ended) {
            if (blocks++ >= MOST_BLOCKS_OF_ALL) {
                throw new UnreadableException(
                        "has more cards than are read", "take the image out of it, into a file of its own");
            }
            if (block.length < CardReader.CARD || header.size() >= MOST_BLOCKS * BLOCK) {
                throw new UnreadableException("has no end of header: no END card was found", Hdu.COPY_AGAIN);
            }
            header.writeBytes(block);
            ended = split(text(block), records);
            block = ended ? block : bytes(source.next(BLOCK));
        }
        return Optional.of(unit(records, header.toByteArray()));
    }

    private static Hdu unit(List<String> records, byte[] header) throws UnreadableException {
        CardReader reader = CardReader.read(records);
        Structure structure = Structure.of(new CardIndex(reader.cards()));
        return new Hdu(reader.cards(), structure, header, reader.oddities());
    }

    /** Adds the block's cards up to END; true when END was there. */
    private static boolean split(String block, List<String> records) {
        for (int i = 0; i + CardReader.CARD <= block.length(); i += CardReader.CARD) {
            String record = block.substring(i, i + CardReader.CARD);
            if (record.startsWith("END ") && record.charAt(8) != '=') {
                return true;
            }
            records.add(record);
        }
        return false;
    }

    private static byte[] bytes(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.remaining()];
        buffer.get(bytes);
        return bytes;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
