package noctuary.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DigestTest {
    private static final String PANGRAM = "The quick brown fox jumps over the lazy dog";

    /** Short texts are one stretch: values of MurmurHash3_x64_128, seed 0, from memory: as its author's program prints the two halves. */
    @Test
    void isThePublishedOne() {
        assertThat(new Digest().hex()).isEqualTo("0".repeat(32));
        assertThat(bytes(PANGRAM)).isEqualTo("e34bbc7bbc071b6c7a433ca9c49a9347");
        assertThat(bytes("hello")).isEqualTo("cbd8a7b341bd9b025b1e906a48ae1d19");
    }

    @Test
    void theWayInWhichBytesComeMakesNoDifference() {
        byte[] all = PANGRAM.repeat(100).getBytes(StandardCharsets.UTF_8);
        Digest piecewise = new Digest();
        for (byte b : all) {
            piecewise.bytes(new byte[] {b});
        }
        assertThat(piecewise.hex()).isEqualTo(new Digest().bytes(all).hex());
    }

    @Test
    void whereATextEndsMakesADifference() {
        assertThat(new Digest().text("ab").text("c").hex())
                .isNotEqualTo(new Digest().text("a").text("bc").hex());
    }

    @Test
    void aSingleBitAnywhereMakesADifference() {
        byte[] all = PANGRAM.repeat(40).getBytes(StandardCharsets.UTF_8);
        Set<String> seen = new HashSet<>();
        seen.add(new Digest().bytes(all).hex());
        for (int i = 0; i < 8 * all.length; i++) {
            all[i / 8] ^= (byte) (1 << i % 8);
            assertThat(seen.add(new Digest().bytes(all).hex())).isTrue();
            all[i / 8] ^= (byte) (1 << i % 8);
        }
    }

    private static String bytes(String text) {
        return new Digest().bytes(text.getBytes(StandardCharsets.UTF_8)).hex();
    }
}
