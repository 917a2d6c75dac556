package noctuary.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** One damaged copy of sound bytes: flipped, set, cut, doubled, moved, or sown with pieces that parsers stumble over. */
final class Mutation {
    private static final List<String> PIECES = List.of(
            "",
            "0",
            "-1",
            "65535",
            "2147483647",
            "9223372036854775807",
            "1e308",
            "-1e-320",
            "NaN",
            "Infinity",
            "''",
            "\"",
            "'",
            "[",
            "]",
            "{",
            "}",
            "{a: ",
            "- - - ",
            "&a ",
            "*a",
            "<<: *a",
            "!!java.net.URL x",
            "? ",
            "|",
            ">",
            "---\n",
            "...\n",
            "\t",
            "\0",
            "\r\n",
            "\u2028",
            "\ud83d\ude00",
            "\uFEFF",
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "javascript:alert(1)",
            "../../../etc/passwd",
            "${page}",
            "<#include \"/etc/passwd\">",
            "[a](",
            "![",
            "**",
            "`",
            "~~",
            "|a|b|\n|-|-|\n",
            "[^1]: ",
            "- [ ] ",
            "END     ",
            "NAXIS1  =           2147483647",
            "BITPIX  =                  -64",
            "CONTINUE  'x&'",
            "HIERARCH A B = ",
            "2025-02-30",
            "99999-01-01",
            "9999999999 mm",
            "1e400 deg",
            "-273.16 °C");

    private final Random random;

    Mutation(Random random) {
        this.random = random;
    }

    byte[] of(byte[] sound) {
        byte[] mutant = sound.clone();
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            mutant = changed(mutant);
        }
        return mutant;
    }

    private byte[] changed(byte[] bytes) {
        if (bytes.length < 4) {
            return "---\n".getBytes(StandardCharsets.US_ASCII);
        }
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> bytes[place(bytes)] ^= (byte) (1 << random.nextInt(8));
            case 3 -> bytes[place(bytes)] = (byte) random.nextInt(256);
            case 4 -> {
                return splice(bytes, PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8));
            }
            case 5 -> {
                return doubled(bytes);
            }
            case 6 -> extreme(bytes);
            default -> {
                return random.nextInt(4) == 0 ? Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length)) : moved(bytes);
            }
        }
        return bytes;
    }

    /** Half of all changes fall where formats keep what they claim: at the beginning. */
    private int place(byte[] bytes) {
        return random.nextInt(random.nextBoolean() ? bytes.length : Math.min(bytes.length, 3000));
    }

    private byte[] splice(byte[] bytes, byte[] piece) {
        int at = place(bytes);
        if (random.nextBoolean()) {
            System.arraycopy(piece, 0, bytes, at, Math.min(piece.length, bytes.length - at));
            return bytes;
        }
        byte[] grown = Arrays.copyOf(bytes, bytes.length + piece.length);
        System.arraycopy(piece, 0, grown, at, piece.length);
        System.arraycopy(bytes, at, grown, at + piece.length, bytes.length - at);
        return grown;
    }

    private byte[] doubled(byte[] bytes) {
        int from = place(bytes);
        int length = Math.min(bytes.length - from, 1 + random.nextInt(80));
        return splice(bytes, Arrays.copyOfRange(bytes, from, from + length));
    }

    private byte[] moved(byte[] bytes) {
        int length = Math.min(bytes.length, 1 + random.nextInt(40));
        System.arraycopy(
                bytes,
                random.nextInt(bytes.length - length + 1),
                bytes,
                random.nextInt(bytes.length - length + 1),
                length);
        return bytes;
    }

    /** Four bytes that are a length, an offset or a number of pixels somewhere. */
    private void extreme(byte[] bytes) {
        int[] values = {0, -1, 1, Integer.MAX_VALUE, Integer.MIN_VALUE, 65536, 1 << 20, 0x7F7FFFFF};
        int value = values[random.nextInt(values.length)];
        int at = Math.min(place(bytes), bytes.length - 4);
        for (int i = 0; i < 4; i++) {
            bytes[at + i] = (byte) (value >> 8 * (random.nextBoolean() ? i : 3 - i));
        }
    }
}
