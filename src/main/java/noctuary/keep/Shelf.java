package noctuary.keep;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** Values of one kind, in files by the start of their keys. */
final class Shelf<T extends Record> {
    private static final int BOARDS = 64;

    private final Path folder;
    private final Packing<T> packing;
    private final String shape;
    private final AtomicReferenceArray<Board> boards = new AtomicReferenceArray<>(BOARDS);

    Shelf(Path folder, Packing<T> packing, String program) {
        this.shape = packing.shape() + " " + program;
        this.folder = folder;
        this.packing = packing;
    }

    Optional<T> find(String key) {
        return board(key).find(key, packing);
    }

    void put(String key, T value) {
        board(key).put(key, packing.pack(value));
    }

    void save() {
        for (int i = 0; i < BOARDS; i++) {
            if (boards.get(i) != null) {
                boards.get(i).save();
            }
        }
    }

    private Board board(String key) {
        int at = Integer.parseInt(key.substring(0, 2), 16) % BOARDS;
        Board board = boards.get(at);
        if (board == null) {
            boards.compareAndSet(at, null, new Board(folder.resolve(Integer.toString(at)), shape));
            board = boards.get(at);
        }
        return board;
    }
}
