package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of {@code entries.spec.md}. */
class NoteSpecTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void readsAsTheExampleSays(String claim, NoteSpec spec, @TempDir Path root) throws IOException {
        spec.layOut(root);
        Journal journal = Journal.read(root);
        assertThat(String.join("\n", NoteSpec.problems(journal))).isEqualTo(String.join("\n", spec.problems()));
        assertThat(NoteSpec.facts(journal)).containsAll(spec.facts());
    }

    static Stream<Arguments> examples() {
        return NoteSpec.all().stream().map(spec -> Arguments.of(spec.claim(), spec));
    }

    @Test
    void thereAreManyExamplesAndEachSaysSomething() {
        List<NoteSpec> specs = NoteSpec.all();
        assertThat(specs).hasSizeGreaterThanOrEqualTo(40);
        assertThat(specs)
                .allSatisfy(spec ->
                        assertThat(spec.facts().size() + spec.problems().size()).isPositive());
        assertThat(specs.stream().map(NoteSpec::claim)).doesNotHaveDuplicates();
    }
}
