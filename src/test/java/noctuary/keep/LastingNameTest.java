package noctuary.keep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LastingNameTest {
    /** By Python's hashlib: {@code sha256(struct.pack('<q', 3) + b'abc').hexdigest()}. */
    @Test
    void staysAsItIs() {
        assertThat(LastingName.of("abc")).isEqualTo("ce91dc5eec0139adf091900d225971d6ad246a845bad791b5693a9d0d55dd391");
    }
}
