package noctuary.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32;

/** One file of kept values: read when first asked, written when something in it changed. */
final class Board {
    private static final String FORM = "board 1";

    /** Where a value lies, and whether somebody asked for it. */
    private static final class Slot {
        private final byte[] in;
        private final int from;
        private final int length;
        private boolean asked;

        Slot(byte[] in, int from, int length, boolean asked) {
            this.in = in;
            this.from = from;
            this.length = length;
            this.asked = asked;
        }
    }

    private final Path file;
    private final String shape;
    private final String[] texts = PackedIn.texts();
    private Map<String, Slot> slots;
    private boolean changed;

    Board(Path file, String shape) {
        this.file = file;
        this.shape = shape;
    }

    synchronized <T extends Record> Optional<T> find(String key, Packing<T> packing) {
        Slot slot = slots().get(key);
        if (slot == null) {
            return Optional.empty();
        }
        slot.asked = true;
        return packing.unpack(new PackedIn(slot.in, slot.from, slot.length, texts));
    }

    synchronized void put(String key, byte[] value) {
        slots().put(key, new Slot(value, 0, value.length, true));
        changed = true;
    }

    synchronized void save() {
        if (slots != null && (slots.values().removeIf(slot -> !slot.asked) || changed)) {
            KeptFile.write(file, packed());
            changed = false;
        }
    }

    private byte[] packed() {
        PackedOut out = new PackedOut();
        out.text(FORM);
        out.text(shape);
        out.count(slots.size());
        new TreeMap<>(slots).forEach((key, slot) -> {
            out.text(key);
            out.part(slot.in, slot.from, slot.length);
        });
        byte[] all = out.bytes();
        out.whole(check(all, 0, all.length));
        return out.bytes();
    }

    private Map<String, Slot> slots() {
        if (slots == null) {
            slots = new HashMap<>();
            try {
                read(KeptFile.read(file));
            } catch (IOException | RuntimeException e) {
                slots.clear();
            }
        }
        return slots;
    }

    private void read(byte[] bytes) {
        int length = bytes.length - Long.BYTES;
        long check = new PackedIn(bytes, length, Long.BYTES, texts).whole();
        PackedIn in = new PackedIn(bytes, 0, length, texts);
        if (check != check(bytes, 0, length)
                || !in.text().equals(FORM)
                || !in.text().equals(shape)) {
            return;
        }
        for (int left = in.size(); left > 0; left--) {
            String key = in.text();
            int size = in.size();
            slots.put(key, new Slot(bytes, in.pass(size), size, false));
        }
    }

    static long check(byte[] bytes, int from, int length) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, length);
        return crc.getValue();
    }
}
