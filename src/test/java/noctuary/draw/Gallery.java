package noctuary.draw;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes one page with every chart, in each theme, into a folder: {@code java noctuary.draw.Gallery FOLDER}, from the
 * project's root.
 */
public final class Gallery {
    private static final Map<String, String> THEMES = Map.of(
            "dark",
            "--ground:#11131a;--panel:#191c25;--line:#323746;--ink:#e8e6df;--ink-soft:#a6a8b0;--mark-1:#8fb4d9;"
                    + "--mark-2:#e0a46c;--mark-3:#9cc5a1;--mark-4:#c7a0d6;--mark-5:#d9d27e;--good:#86c29a;"
                    + "--bad:#e58a7c;--warn:#dcb862",
            "light",
            "--ground:#fbfaf6;--panel:#f1efe8;--line:#d9d6cc;--ink:#1d1f24;--ink-soft:#5b5f69;--mark-1:#2c5d8f;"
                    + "--mark-2:#a4561a;--mark-3:#2f7148;--mark-4:#7b3f8f;--mark-5:#7a6a00;--good:#226b3e;"
                    + "--bad:#a8321f;--warn:#8a6200",
            "red",
            "--ground:#000000;--panel:#140000;--line:#4a0000;--ink:#ff3b30;--ink-soft:#c42318;--mark-1:#ff3b30;"
                    + "--mark-2:#d0261c;--mark-3:#ff6a5c;--mark-4:#b01c14;--mark-5:#e8453a;--good:#ff6a5c;"
                    + "--bad:#ff3b30;--warn:#d0261c");

    private Gallery() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        String css = Files.readString(Path.of("site-templates/assets/charts.css"), StandardCharsets.UTF_8);
        for (String theme : THEMES.keySet()) {
            Files.writeString(folder.resolve(theme + ".html"), page(theme, css), StandardCharsets.UTF_8);
            String frame = "<!doctype html><title>narrow</title><body style=\"margin:0;background:#777\">"
                    + "<iframe src=\"" + theme + ".html\" width=\"390\" height=\"7800\" style=\"border:0\"></iframe>";
            Files.writeString(folder.resolve(theme + "-390.html"), frame, StandardCharsets.UTF_8);
        }
    }

    static Map<String, Chart> charts() {
        Map<String, Chart> charts = new LinkedHashMap<>();
        charts.put("months", Samples.months());
        charts.put("trend", Samples.trend());
        charts.put("spark", Samples.spark());
        charts.put("whiskers", Samples.whiskers());
        charts.put("zones", Samples.zones());
        charts.put("overlay", Samples.overlay());
        charts.put("course", Samples.course());
        charts.put("growth", Samples.growth());
        charts.put("calendar", Samples.calendar());
        charts.put("train", Samples.train());
        charts.put("broken-train", Samples.brokenTrain());
        charts.put("intervals", Samples.intervals());
        charts.put("filters", Samples.filters());
        charts.put("strength", Samples.strength());
        charts.put("framing", Samples.framing());
        charts.put("noise-by-time", SmallCharts.noiseByTime());
        return charts;
    }

    private static String page(String theme, String css) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        page.append("<title>Charts</title><style>\n");
        THEMES.forEach((name, colours) -> page.append("html:has(#")
                .append(name)
                .append(":checked){")
                .append(colours)
                .append("}\n"));
        page.append("html{background:var(--ground);color:var(--ink);font:16px/1.5 \"Source Sans 3\",\"Segoe UI\",")
                .append("\"DejaVu Sans\",sans-serif}body{max-width:54rem;margin:1.5rem auto;padding:0 1.5rem}")
                .append("figure{margin:2.5rem 0}figcaption{font-weight:600;margin-bottom:.6rem}")
                .append(".picture{position:relative;background:linear-gradient(30deg,#050608,#39302c);")
                .append("aspect-ratio:4/3}\n@media(max-width:500px){body{padding:0 .9rem}}\n");
        page.append(css).append("</style></head><body><p>");
        for (String name : THEMES.keySet().stream().sorted().toList()) {
            page.append("<label><input type=\"radio\" name=\"theme\" id=\"")
                    .append(name)
                    .append(name.equals(theme) ? "\" checked>" : "\">")
                    .append(name)
                    .append("</label> ");
        }
        page.append("</p>\n");
        charts().forEach((id, chart) -> page.append("<figure><figcaption>")
                .append(id)
                .append(id.equals("overlay") ? "</figcaption><div class=\"picture\">" : "</figcaption><div>")
                .append(chart.both(id))
                .append("</div></figure>\n"));
        return page.append("</body></html>\n").toString();
    }
}
