package noctuary.keep;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What everything in a folder looked like from outside, by the name of what stands directly in it.
 *
 * @param digests of a file, or of a folder with all that is below it
 * @param besides the same without the files that were to be left out
 * @param trouble why there are none; empty when they could be told
 */
public record Branches(Path folder, Map<String, String> digests, Map<String, String> besides, String trouble) {
    public Branches {
        digests = Collections.unmodifiableMap(new LinkedHashMap<>(digests));
        besides = Collections.unmodifiableMap(new LinkedHashMap<>(besides));
    }

    /** Of a folder that nobody looked at: nothing is known of any place. */
    public static Branches unknown(Path folder) {
        return untold(folder, "unknown");
    }

    static Branches untold(Path folder, String trouble) {
        return new Branches(folder, Map.of(), Map.of(), trouble);
    }

    /** The same of the folder by another way to it. */
    public Branches of(Path sameFolder) {
        return new Branches(sameFolder, digests, besides, trouble);
    }

    /** Of everything together. */
    public String whole() {
        Digest digest = new Digest().text(trouble);
        digests.forEach((name, each) -> digest.text(name).text(each));
        return digest.hex();
    }

    /** What stands directly in the folder and holds a place, or the folder itself; empty for a place elsewhere. */
    public Optional<Path> branch(Path place) {
        if (!place.startsWith(folder)) {
            return Optional.empty();
        }
        return Optional.of(place.equals(folder) ? folder : folder.resolve(place.getName(folder.getNameCount())));
    }

    /** Of what holds a place, which may itself be missing; of everything for the folder itself; empty when unknown. */
    public Optional<String> around(Path place) {
        if (!trouble.isEmpty()) {
            return Optional.empty();
        }
        return branch(place)
                .map(branch -> branch.equals(folder)
                        ? whole()
                        : digests.getOrDefault(branch.getFileName().toString(), "nothing"));
    }
}
