package noctuary.measure;

import java.util.Optional;
import java.util.function.Supplier;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;

/** Files laid on each other by their stars, once for every two. */
public final class SkyMatches {
    private record Found(Optional<SkyMatch> match) {
        static final Packing<Found> PACKING = Packing.of(Found.class);
    }

    private final Memo memo;

    public SkyMatches(Memo memo) {
        this.memo = memo;
    }

    /** As {@link SkyMatch#of}. */
    public Optional<SkyMatch> of(Measurement file, Measurement reference) {
        return of(file.content(), () -> file, reference.content(), () -> reference);
    }

    /**
     * @param content identity of the file's bytes; its measurement is asked for only when the two were not laid on each
     *     other before
     */
    Optional<SkyMatch> of(
            String content, Supplier<Measurement> file, String referenceContent, Supplier<Measurement> reference) {
        String key = content.isEmpty() || referenceContent.isEmpty()
                ? ""
                : new Digest().text(content).text(referenceContent).hex();
        return memo.recall("laid", Found.PACKING, key, () -> new Found(SkyMatch.of(file.get(), reference.get())))
                .match();
    }
}
