package noctuary.keep;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Walks a folder; its branches are looked at two at a time. */
final class TreeGlance {
    private final Path bounds;
    private final Predicate<Path> apart;
    private volatile boolean sawLink;

    TreeGlance(Path bounds, Predicate<Path> apart) {
        this.bounds = bounds;
        this.apart = apart;
    }

    /** Whether anything in what was walked is a link. */
    boolean sawLink() {
        return sawLink;
    }

    Branches of(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> branches = all.sorted().toList();
            List<Look> looks = branches.parallelStream()
                    .map(branch -> {
                        Branch walk = new Branch(folder);
                        walk.into(branch);
                        return walk.look();
                    })
                    .toList();
            Map<String, String> digests = new LinkedHashMap<>();
            Map<String, String> besides = new LinkedHashMap<>();
            for (int i = 0; i < looks.size(); i++) {
                String name = branches.get(i).getFileName().toString();
                digests.put(name, looks.get(i).whole());
                besides.put(name, looks.get(i).beside());
            }
            return new Branches(folder, digests, besides, "");
        } catch (IOException e) {
            return Branches.untold(folder, Files.exists(folder) ? "unreadable" : "nothing");
        }
    }

    /** @param beside without what is told apart */
    private record Look(String whole, String beside) {}

    private final class Branch extends SimpleFileVisitor<Path> {
        private final Path folder;
        private final Digest digest = new Digest();
        private final Digest told = new Digest();
        private final TreeSet<Path> linked = new TreeSet<>();

        Branch(Path folder) {
            this.folder = folder;
        }

        void into(Path place) {
            try {
                Files.walkFileTree(place, this);
            } catch (IOException e) {
                digest.text("unreadable");
            }
        }

        Look look() {
            String beside = digest.hex();
            return new Look(new Digest().text(beside).text(told.hex()).hex(), beside);
        }

        @Override
        public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes a) {
            digest.text("folder").text(dir.getFileName().toString());
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes a) {
            digest.text(file.getFileName().toString());
            if (a.isSymbolicLink()) {
                sawLink = true;
                link(file);
            } else if (apart.test(folder.relativize(file))) {
                stamp(told, a);
            } else {
                stamp(digest, a);
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            digest.text(file.getFileName().toString()).text("unreadable");
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path dir, IOException e) {
            digest.text("end").number(e == null ? 0 : 1);
            return FileVisitResult.CONTINUE;
        }

        private static void stamp(Digest digest, BasicFileAttributes a) {
            Object key = a.fileKey();
            digest.number(a.size())
                    .number(a.lastModifiedTime().to(TimeUnit.NANOSECONDS))
                    .number(key == null ? 0 : key.hashCode());
        }

        private void link(Path link) {
            try {
                Path real = link.toRealPath();
                digest.text(real.toString());
                if (!Files.isDirectory(real)) {
                    stamp(digest, Files.readAttributes(real, BasicFileAttributes.class));
                } else if (real.startsWith(bounds) && !real.startsWith(folder) && linked.add(real)) {
                    into(real);
                }
            } catch (IOException e) {
                digest.text("leads nowhere");
            }
        }
    }
}
