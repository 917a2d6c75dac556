package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import noctuary.stars.sim.FitsBytes;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Expected values are what measuring each file by itself gives: being measured beside another changes nothing. */
class ProcessionTest {
    @TempDir
    private Path folder;

    private List<Path> files;

    @BeforeEach
    void write() throws IOException {
        files = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            files.add(frame(i, i == 0 ? 900 : 200));
        }
        files.add(1, Files.writeString(folder.resolve("damaged.fits"), "SIMPLE"));
        files.add(folder.resolve("missing.fits"));
        Path picture = folder.resolve("a.png");
        ImageIO.write(new BufferedImage(100, 100, BufferedImage.TYPE_3BYTE_BGR), "png", picture.toFile());
        files.add(picture);
    }

    private Path frame(int seed, int side) throws IOException {
        Path file = folder.resolve(seed + ".fits");
        SkySimulator sky = new SkySimulator(side, side, seed).shape(StarShape.constant(3, 0.1, 20, 3));
        FitsBytes.write(sky.stars(40, 20, 200, 15).frame().plane(), file);
        return file;
    }

    @Test
    void everyFileIsHandedOutInOrderAsIfItWereAlone() {
        assertThat(measured(new Headroom(1L << 30))).isEqualTo(alone());
    }

    @Test
    void filesTooLargeForEachOtherAreMeasuredInTurn() {
        assertThat(measured(new Headroom(1))).isEqualTo(alone());
    }

    @Test
    void whatTheReceiverThrowsEndsIt() {
        List<Path> seen = new ArrayList<>();
        assertThatThrownBy(() -> Procession.of(files, (file, measurement) -> {
                    seen.add(file);
                    throw new IllegalStateException("full");
                }))
                .hasMessage("full");
        assertThat(seen).containsExactly(files.get(0));
    }

    @Test
    void noFileIsNoWork() {
        Procession.of(List.of(), (file, measurement) -> {
            throw new IllegalStateException(file.toString());
        });
    }

    private List<String> measured(Headroom headroom) {
        List<String> lines = new ArrayList<>();
        Procession.of(files, (file, measurement) -> lines.add(line(file, measurement)), headroom);
        return lines;
    }

    private List<String> alone() {
        return files.stream().map(file -> line(file, Meter.measure(file))).toList();
    }

    private static String line(Path file, Measurement measurement) {
        return file + " " + measurement;
    }
}
