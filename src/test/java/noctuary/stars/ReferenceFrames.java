package noctuary.stars;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.PlantedStar;

/**
 * Writes the frames of the truth table, what was planted in them and what we measure, into a folder, for
 * src/test/python/references.py to measure with other programs.
 */
public final class ReferenceFrames {
    private ReferenceFrames() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        List<String> ours = new ArrayList<>();
        ours.add("frame,name,fwhm,ellipticity,beta,ours_fwhm,ours_ellipticity,ours_bright,ours_faint,ours_false");
        for (SkyScenes scene : scenes()) {
            String name = String.format(Locale.ROOT, "frame%02d", ours.size());
            FitsBytes.write(scene.frame().plane(), folder.resolve(name + ".fits"));
            Files.write(folder.resolve(name + ".csv"), truth(scene));
            ours.add(name + "," + TruthRow.measure(scene).csv());
        }
        Files.write(folder.resolve("ours.csv"), ours);
    }

    private static List<SkyScenes> scenes() {
        List<SkyScenes> scenes = new ArrayList<>();
        for (double beta : new double[] {2.5, 3.5}) {
            for (double ellipticity : new double[] {0, 0.2, 0.4}) {
                for (double fwhm : new double[] {1.4, 2, 3, 4.5, 7}) {
                    scenes.add(SkyScenes.plain(fwhm, ellipticity, beta, 1));
                }
            }
        }
        scenes.add(SkyScenes.crowded(3.5, 1));
        scenes.add(SkyScenes.nebula(3.5, 1));
        scenes.add(SkyScenes.nearlyEmpty(3.5, 1));
        return scenes;
    }

    private static List<String> truth(SkyScenes scene) {
        List<String> lines = new ArrayList<>();
        lines.add("x,y,snr");
        for (PlantedStar s : scene.frame().stars()) {
            lines.add(String.format(Locale.ROOT, "%.4f,%.4f,%.3f", s.x(), s.y(), s.snr()));
        }
        return lines;
    }
}
