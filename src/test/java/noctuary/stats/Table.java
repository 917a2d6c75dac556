package noctuary.stats;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Outside truth from a file beside the tests, by column. */
record Table(double[][] columns) {
    static Table read(String name) {
        try (InputStream in = Table.class.getResourceAsStream("/noctuary/stats/" + name)) {
            double[][] rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> java.util.Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
            double[][] columns = new double[rows[0].length][rows.length];
            for (int i = 0; i < rows.length; i++) {
                for (int j = 0; j < columns.length; j++) {
                    columns[j][i] = rows[i][j];
                }
            }
            return new Table(columns);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double[] column(int j) {
        return columns[j];
    }
}
