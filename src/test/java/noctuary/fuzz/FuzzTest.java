package noctuary.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slice of {@link FuzzBench}, the same at every build, and every seed that was ever a finding. */
class FuzzTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "fits, 1, 3000",
        "pictures, 1, 1500",
        "notes, 1, 40",
        "sites, 1, 2",
        "values, 1, 1",
        "pages, 1, 300",
        "kept, 1, 3",
        "requests, 1, 300"
    })
    void mutantsAreReadOrRefusedInWords(String kind, long first, int seeds) throws Exception {
        AtomicInteger left = new AtomicInteger(seeds);
        FuzzRun run = new FuzzRun(FuzzBench.subject(kind, folder));
        run.attack(first, () -> left.getAndDecrement() > 0);
        assertThat(run.findings()).isEmpty();
        assertThat(run.inputs()).isGreaterThanOrEqualTo(seeds);
    }

    /**
     * Found in the first million, mended since: tiles of no size and of 1e-32024 pixels filled the heap, hierarchical
     * tiles went round in circles, a dither began before its table, its trace was printed, and
     * time lost on a night without any exposure was held against nothing. Later: a word of thousands of letters on a chart,
     * nights of the years 1 and 9999, an exposure of no time, and one of 10^15 seconds.
     */
    @ParameterizedTest
    @CsvSource({"fits, 46955", "fits, 138025", "fits, 317654", "sites, 48", "sites, 69", "values, 3", "values, 35"})
    void whatWasFoundStaysMended(String kind, long seed) throws Exception {
        mutantsAreReadOrRefusedInWords(kind, seed, 1);
    }
}
