package noctuary.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.LastingName;

/** Remembers each file's digest by its stamp, so that unchanged files are not read again: one list for each folder of files. */
final class ContentIndex {
    private final Path store;
    private final Map<Path, ContentList> lists = new ConcurrentHashMap<>();

    ContentIndex(Path store) {
        this.store = store;
    }

    String digest(Path file) throws IOException {
        Path plain = file.toAbsolutePath().normalize();
        ContentList list = lists.computeIfAbsent(plain.getParent(), folder -> new ContentList(place(folder)));
        return list.digest(plain);
    }

    void save() {
        lists.values().forEach(ContentList::save);
    }

    private Path place(Path folder) {
        return store.resolve(LastingName.of(folder.toString()).substring(0, 32) + ".tsv");
    }
}
