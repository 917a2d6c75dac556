package noctuary.entry;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the links and pictures of one note lead: to the web, to other notes' pages, to files inside the journal. */
final class NoteLinks {
    private static final Pattern SCHEME = Pattern.compile("([A-Za-z][A-Za-z0-9+.-]*):.*", Pattern.DOTALL);
    private static final Set<String> ALLOWED = Set.of("http", "https", "mailto");
    private static final Set<String> PICTURES = Set.of("png", "jpg", "jpeg", "gif");
    private static final String UNREAD = "webp";
    private static final Set<String> PAPERS = Set.of("txt", "csv", "pdf");
    private static final String TO_ROOT = "../../";

    private final Path root;
    private final Path folder;
    private final Pages pages;
    private final Trail trail;
    private final Margin margin;
    private final Map<Path, Attachment> attachments = new LinkedHashMap<>();
    private final UniqueNames names = new UniqueNames();

    /**
     * @param root with symbolic links resolved
     * @param folder of the note
     * @param trail told every place that is looked at
     * @param pages of all notes, from the site's top folder, by the note's path and, for entries, its folder's
     */
    NoteLinks(Path root, Path folder, Trail trail, Pages pages, Margin margin) {
        this.root = root;
        this.folder = folder;
        this.trail = trail;
        this.pages = pages;
        this.margin = margin;
    }

    List<Attachment> attachments() {
        return List.copyOf(attachments.values());
    }

    /** Whether a link leads to the web. */
    static boolean isRemote(String url) {
        Matcher scheme = SCHEME.matcher(url);
        return scheme.matches() && ALLOWED.contains(scheme.group(1).toLowerCase(Locale.ROOT)) && isPlain(url);
    }

    /** The address to write, or empty, with a notice, for a link that must not or cannot lead anywhere. */
    Optional<String> link(String url, int line) {
        if (isRemote(url)) {
            return Optional.of(url);
        }
        Optional<Path> file = local(url, line);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> page = pages.at(file.get());
        if (page.isPresent()) {
            return Optional.of(TO_ROOT + page.get());
        }
        return attached(file.get(), url, line, true);
    }

    /** The picture file inside the journal, or empty with a notice. */
    Optional<Attachment> picture(String url, int line) {
        Optional<Path> file = local(url, line);
        return file.flatMap(path -> attached(path, url, line, false)).map(href -> attachments.get(file.get()));
    }

    private Optional<String> attached(Path file, String url, int line, boolean papers) {
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (ending.equals(UNREAD)) {
            margin.notice(
                    line,
                    "",
                    Margin.quoted(url) + " is a WebP picture, which is not read",
                    "save it as png, jpg or gif");
            return Optional.empty();
        }
        boolean fits = PICTURES.contains(ending) || papers && PAPERS.contains(ending);
        if (!fits || !Files.isRegularFile(file)) {
            return refuse(
                    url,
                    line,
                    papers ? "link to a note, a picture, or a txt, csv or pdf file" : "show a png, jpg or gif file");
        }
        return Optional.of(attachments
                .computeIfAbsent(file, path -> new Attachment("files/" + names.next(called(name, ending)), path))
                .href());
    }

    /** Pictures lose the names that their files have on the keeper's disk; a paper is linked in order to be kept. */
    private static String called(String name, String ending) {
        return PICTURES.contains(ending) ? "picture." + ending : Slug.of(name);
    }

    private Optional<Path> local(String url, int line) {
        boolean odd = !isPlain(url) || url.isEmpty() || SCHEME.matcher(url).matches() || url.indexOf('\\') >= 0;
        if (odd || url.startsWith("/") || url.startsWith("?")) {
            return refuse(url, line, "only http, https and mailto links, and paths beside the note, are followed");
        }
        try {
            String path = URLDecoder.decode(url.replaceAll("[?#].*", "").replace("+", "%2B"), StandardCharsets.UTF_8);
            Path file = folder.resolve(path).normalize();
            boolean looked = pages.at(file).isEmpty();
            if (looked) {
                trail.pass(file);
            }
            if (!file.startsWith(root) || looked && !file.toRealPath().startsWith(root)) {
                return refuse(url, line, "only files inside the journal are linked");
            }
            return Optional.of(file);
        } catch (IOException | IllegalArgumentException e) {
            return refuse(url, line, "there is no such file beside this note");
        }
    }

    /** Says that no heading of the note has this name. */
    Optional<String> nowhere(String url, int line) {
        return refuse(url, line, "write # and a heading of this note, with - for spaces");
    }

    private static boolean isPlain(String url) {
        return url.chars().noneMatch(c -> c <= ' ' || c == 0x7f);
    }

    private <T> Optional<T> refuse(String url, int line, String hint) {
        margin.notice(line, "", "the link to " + Margin.quoted(url) + " leads nowhere", hint);
        return Optional.empty();
    }
}
