package noctuary.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import noctuary.draw.Canvas;
import noctuary.draw.Preview;
import noctuary.draw.Tiles;
import noctuary.keep.KeptFile;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Size;
import noctuary.site.SiteContent.TileSet;

/** One picture in the cache: previews in several widths and, when it is larger than these, tiles. */
final class Shelf {
    static final int[] WIDTHS = {320, 800, 1600};

    private static final String LIST = "size.txt";
    private static final String TILES = "tiles";

    private final Path folder;

    Shelf(Path folder) {
        this.folder = folder;
    }

    /** The wanted widths up to the source's own, which stands for the first one beyond it. */
    static int[] widths(int sourceWidth) {
        List<Integer> widths = new ArrayList<>();
        for (int width : WIDTHS) {
            widths.add(Math.min(width, sourceWidth));
            if (width >= sourceWidth) {
                break;
            }
        }
        return widths.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * Adds all to {@code into} of the site, as {@code name-WIDTH.jpg} and {@code name-tiles/LEVEL/COLUMN_ROW.jpg}.
     *
     * @throws IOException also when the shelf is empty or damaged
     */
    Picture add(Placing site, String into, String name) throws IOException {
        List<Size> sizes = new ArrayList<>();
        Optional<TileSet> tiles = Optional.empty();
        int[] whole = {};
        String list = new String(KeptFile.read(folder.resolve(LIST)), StandardCharsets.UTF_8);
        for (String line : list.strip().split("\n")) {
            int[] numbers = numbers(line);
            if (whole.length == 0) {
                whole = numbers;
            } else if (numbers.length == 2) {
                String path = into + "/" + name + "-" + numbers[0] + ".jpg";
                site.add(folder.resolve(numbers[0] + ".jpg"), path);
                sizes.add(new Size(path, numbers[0], numbers[1]));
            } else {
                TileSet set =
                        new TileSet(into + "/" + name + "-" + TILES, numbers[0], numbers[1], numbers[2], numbers[3]);
                addTiles(site, set);
                tiles = Optional.of(set);
            }
        }
        return new Picture(whole[0], whole[1], sizes, tiles);
    }

    private void addTiles(Placing site, TileSet set) throws IOException {
        int width = set.width();
        int height = set.height();
        for (int level = 0; level < set.levels(); level++) {
            Path from = folder.resolve(TILES).resolve(Integer.toString(level));
            String to = set.folder() + "/" + level + "/";
            for (int row = 0; row * set.side() < height; row++) {
                for (int column = 0; column * set.side() < width; column++) {
                    String tile = column + "_" + row + ".jpg";
                    site.add(from.resolve(tile), to + tile);
                }
            }
            width = (width + 1) / 2;
            height = (height + 1) / 2;
        }
    }

    /**
     * Fills the shelf, once what was on it is gone, links too: nothing is written through one. The list of sizes is written last: a shelf without it counts as empty.
     *
     * @param previews smallest first
     * @param whole at full size; cut into tiles when it is wider or higher than the largest preview
     */
    void fill(int sourceWidth, int sourceHeight, List<Preview.Encoded> previews, Optional<Canvas> whole)
            throws IOException {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            FolderTree.delete(folder);
        }
        Files.createDirectories(folder);
        StringBuilder list = new StringBuilder(sourceWidth + " " + sourceHeight + "\n");
        int last = 0;
        for (Preview.Encoded picture : previews) {
            if (picture.width() != last) {
                last = picture.width();
                SharedFile.write(folder.resolve(last + ".jpg"), picture.bytes());
                list.append(last).append(' ').append(picture.height()).append('\n');
            }
        }
        OptionalInt levels = whole.isPresent() ? OptionalInt.of(tiles(whole.get())) : OptionalInt.empty();
        if (levels.isPresent()) {
            list.append(Tiles.SIDE).append(' ').append(levels.getAsInt()).append(' ');
            list.append(whole.get().width())
                    .append(' ')
                    .append(whole.get().height())
                    .append('\n');
        }
        Files.writeString(folder.resolve(LIST), list);
    }

    private int tiles(Canvas canvas) throws IOException {
        return Tiles.cut(canvas, (level, column, row, jpeg) -> {
            Path to = Files.createDirectories(folder.resolve(TILES).resolve(Integer.toString(level)));
            SharedFile.write(to.resolve(column + "_" + row + ".jpg"), jpeg);
        });
    }

    private static int[] numbers(String line) {
        String[] parts = line.split(" ");
        int[] numbers = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Integer.parseInt(parts[i]);
        }
        return numbers;
    }
}
