package noctuary.site.page;

import java.util.List;

/** What can be taken away. */
public record DownloadsPage(Head head, List<File> files, boolean coordinates, boolean fileNames) {
    public DownloadsPage {
        files = List.copyOf(files);
    }

    public record File(Link file, String size, String rows, List<Column> columns) {
        public File {
            columns = List.copyOf(columns);
        }
    }

    public record Column(String name, String meaning) {}
}
