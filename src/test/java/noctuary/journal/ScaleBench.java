package noctuary.journal;

import java.nio.file.Files;
import java.nio.file.Path;

/** Scale. */
final class ScaleBench {
    private ScaleBench() {}

    public static void main(String[] args) throws Exception {
        Path root = Path.of(args[0]);
        if (!Files.exists(root)) {
            GrownJournal.write(root, Integer.parseInt(args[1]));
        }
    }
}
