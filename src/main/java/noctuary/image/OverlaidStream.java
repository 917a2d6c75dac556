package noctuary.image;

import java.io.File;
import java.io.IOException;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.imageio.stream.FileImageInputStream;

/** A file that reads as if single bytes of it were others. */
final class OverlaidStream extends FileImageInputStream {
    private final NavigableMap<Long, Byte> changed;

    /** @param changed by file offset */
    OverlaidStream(File file, Map<Long, Byte> changed) throws IOException {
        super(file);
        this.changed = new TreeMap<>(changed);
    }

    @Override
    public int read() throws IOException {
        Byte other = changed.get(getStreamPosition());
        int stored = super.read();
        return other == null || stored < 0 ? stored : other & 255;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        long from = getStreamPosition();
        int count = super.read(bytes, offset, length);
        for (Map.Entry<Long, Byte> each :
                changed.subMap(from, from + Math.max(0, count)).entrySet()) {
            bytes[offset + (int) (each.getKey() - from)] = each.getValue();
        }
        return count;
    }
}
