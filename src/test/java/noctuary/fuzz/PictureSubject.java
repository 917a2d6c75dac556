package noctuary.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import noctuary.draw.PlainCopy;
import noctuary.draw.Preview;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.UnreadablePictureException;

/** PNG, JPEG and TIFF, read for measuring, drawn small, and copied without what stands beside their pixels. */
final class PictureSubject implements Subject {
    private static final List<String> NAMES = List.of(
            "rgb.jpg",
            "rgb16.png",
            "rgba16.png",
            "rgb16-interlaced.png",
            "rgb8-lzw.tif",
            "rgb16-lzw-planar.tif",
            "rgb16-lzw-tiled.tif",
            "rgb16-packbits.tif",
            "rgb16-zip-msb.tif",
            "rgba16-zip.tif",
            "rgbf16-zip.tif",
            "rgbf32-zip.tif",
            "rgbf32.tif");

    private final List<byte[]> sound = new ArrayList<>();
    private final Path folder;

    PictureSubject(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
        for (String name : NAMES) {
            try (var in = PictureFile.class.getResourceAsStream("/noctuary/image/" + name)) {
                sound.add(in.readAllBytes());
            }
        }
    }

    @Override
    public String name() {
        return "pictures";
    }

    @Override
    public int attack(long seed) throws Throwable {
        Random random = new Random(seed);
        int which = random.nextInt(sound.size());
        byte[] mutant = new Mutation(random).of(sound.get(which));
        Path file = Files.write(folder.resolve("mutant" + NAMES.get(which).replaceAll(".*\\.", ".")), mutant);
        try {
            PictureImage picture = PictureFile.read(file);
            if (random.nextInt(20) == 0) {
                Preview.ofPicture(picture, 320);
            }
        } catch (UnreadablePictureException e) {
            Refusal.require(e.getMessage());
        }
        try {
            PlainCopy.of(file);
        } catch (UnreadablePictureException e) {
            Refusal.require(e.getMessage());
        }
        return 1;
    }
}
