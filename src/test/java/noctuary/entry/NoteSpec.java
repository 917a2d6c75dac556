package noctuary.entry;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One example of {@code entries.spec.md}.
 *
 * @param files path to content; a path with {@code (none)} behind it is deleted from the given journal
 * @param facts lines that must be among the facts
 * @param problems all problems
 */
record NoteSpec(String claim, Map<String, String> files, List<String> facts, List<String> problems) {
    private static final String FENCE = "~~~~~";

    static List<NoteSpec> all() {
        try (var in = NoteSpec.class.getResourceAsStream("entries.spec.md")) {
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<NoteSpec> parse(List<String> lines) {
        List<NoteSpec> specs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("## ")) {
                specs.add(new NoteSpec(line.substring(3), new LinkedHashMap<>(), new ArrayList<>(), new ArrayList<>()));
            } else if (line.startsWith(FENCE)) {
                int end = i + 1;
                while (!lines.get(end).equals(FENCE)) {
                    end++;
                }
                specs.get(specs.size() - 1).block(line.substring(FENCE.length()).strip(), lines.subList(i + 1, end));
                i = end;
            }
        }
        return specs;
    }

    private void block(String name, List<String> lines) {
        switch (name) {
            case "facts" -> facts.addAll(lines);
            case "problems" -> problems.addAll(lines);
            default -> files.put(name, lines.isEmpty() ? "" : String.join("\n", lines) + "\n");
        }
    }

    /** Lays the example's files over a journal that has the settings, one rig and one site. */
    void layOut(Path root) throws IOException {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("entries/journal.yaml", "title: Nights\nrig: heron\nsite: terrace\narchive: {main: ../frames}\n");
        all.put("entries/rigs/heron.md", "---\nname: Heron\n---\n");
        all.put("entries/sites/terrace.md", "---\nname: Terrace\n---\n");
        all.put("entries/frame.fits", "");
        all.put("frames/2025-06-14/a.fits", "");
        all.put("frames/2025-06-14/b.fits", "");
        all.putAll(files);
        files.keySet().stream()
                .filter(name -> name.endsWith(" (none)"))
                .forEach(name -> all.remove(name.replace(" (none)", "")));
        for (var file : all.entrySet()) {
            if (!file.getKey().endsWith(" (none)")) {
                Path path = root.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, bytes(file.getValue()));
            }
        }
    }

    /** Arrow for tab, {@code ␍} for carriage return, {@code ⟨FF⟩} for any byte. */
    private static byte[] bytes(String text) {
        String plain = text.replace('→', '\t').replace("␍", "\r");
        var out = new ByteArrayOutputStream();
        for (int i = 0; i < plain.length(); i++) {
            if (plain.charAt(i) == '⟨') {
                out.write(Integer.parseInt(plain.substring(i + 1, i + 3), 16));
                i += 3;
            } else {
                int point = plain.codePointAt(i);
                out.writeBytes(Character.toString(point).getBytes(StandardCharsets.UTF_8));
                i += Character.charCount(point) - 1;
            }
        }
        return out.toByteArray();
    }

    /** Facts as lines, such as {@code night title: A night}. */
    static List<String> facts(Journal journal) {
        List<String> lines = new ArrayList<>(SpecFacts.of(journal.settings()));
        journal.rigs().values().forEach(rig -> lines.addAll(SpecFacts.of(rig)));
        journal.sites().values().forEach(site -> lines.addAll(SpecFacts.of(site)));
        journal.entries().forEach(entry -> lines.addAll(SpecFacts.of(entry, journal.root())));
        return lines;
    }

    static List<String> problems(Journal journal) {
        return journal.problems().stream()
                .map(p -> (p.isFault() ? "" : "(notice) ") + p.where() + ": " + p.what() + "; " + p.hint())
                .toList();
    }
}
