package noctuary.demo;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code truth.csv}: a row a file, its columns by name. */
public final class TruthTable {
    private TruthTable() {}

    public static List<Map<String, String>> read() {
        try (var in = new BufferedReader(
                new InputStreamReader(TruthTable.class.getResourceAsStream("truth.csv"), StandardCharsets.UTF_8))) {
            List<String> lines =
                    in.lines().filter(line -> !line.startsWith("#")).toList();
            String[] names = lines.get(0).split(",");
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int k = 0; k < names.length; k++) {
                    row.put(names[k], cells[k]);
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
