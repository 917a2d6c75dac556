package noctuary.sky;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads {@code catalogue.csv}, whose head tells its columns and where they come from. */
final class CatalogueFile {
    private CatalogueFile() {}

    static List<DeepSkyObject> read() {
        try (var reader = new BufferedReader(new InputStreamReader(
                CatalogueFile.class.getResourceAsStream("catalogue.csv"), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(CatalogueFile::object)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DeepSkyObject object(String line) {
        String[] cells = line.split(";", -1);
        String[] size = cells[5].split("x");
        double width = Double.parseDouble(size[0]);
        return new DeepSkyObject(
                cells[0],
                list(cells[1]),
                list(cells[7]),
                DeepSkyObject.Kind.valueOf(cells[4].toUpperCase(Locale.ROOT).replace(' ', '_')),
                new Equatorial(15 * sexagesimal(cells[2]), sexagesimal(cells[3])),
                width,
                size.length > 1 ? Double.parseDouble(size[1]) : width,
                cells[6]);
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split("/")).filter(s -> !s.isEmpty()).toList();
    }

    private static double sexagesimal(String cell) {
        String[] parts = cell.split(" ");
        double size = Math.abs(Double.parseDouble(parts[0])) + Double.parseDouble(parts[1]) / 60;
        return cell.startsWith("-") ? -size : size;
    }
}
