package noctuary.journal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.fact.Problem;
import noctuary.keep.Glance;
import noctuary.keep.KeptFile;

/**
 * What the last render of a journal into a folder read, left there and told.
 *
 * @param read what the journal looked like before it was read
 * @param trail what places outside {@code entries} looked like before they were read
 * @param site what the site looked like when it was finished
 */
record Standing(String read, Map<Path, String> trail, String site, Rendering.Outcome outcome) {
    private static final String FORM = "standing 1";

    Standing {
        trail = new TreeMap<>(trail);
    }

    /** Whether the site is as it was left. */
    boolean stands(Path output) {
        return !site.isEmpty() && site.equals(site(output));
    }

    /** Whether all that it was made from is as it was. */
    boolean holds(String journal) {
        return read.equals(journal) && trailHolds();
    }

    /** Whether the places outside {@code entries} are as they were. */
    boolean trailHolds() {
        return trail.entrySet().stream().allMatch(e -> Glance.at(e.getKey()).equals(e.getValue()));
    }

    /** What a site looks like; empty when it cannot be told or something in it is no file or folder of its own. */
    static String site(Path output) {
        return Glance.ofOwn(output);
    }

    /** Of the last render; empty when there was none, or what it left is damaged. */
    static Optional<Standing> find(Path place) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(KeptFile.readSummed(place)))) {
            return text(in).equals(FORM) ? Optional.of(read(in)) : Optional.empty();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    void keep(Path place) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            write(new DataOutputStream(bytes));
            KeptFile.writeSummed(place, bytes.toByteArray());
        } catch (IOException e) {
            throw new IllegalStateException("memory takes all bytes", e);
        }
    }

    private static Standing read(DataInputStream in) throws IOException {
        String read = text(in);
        Map<Path, String> trail = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            trail.put(Path.of(text(in)), text(in));
        }
        String site = text(in);
        int entries = in.readInt();
        int files = in.readInt();
        List<Problem> problems = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            var severity = Problem.Severity.valueOf(text(in));
            problems.add(new Problem(severity, text(in), text(in), text(in), text(in)));
        }
        return new Standing(read, trail, site, new Rendering.Outcome(entries, files, 0, true, problems));
    }

    private void write(DataOutputStream out) throws IOException {
        texts(out, FORM, read);
        out.writeInt(trail.size());
        for (Map.Entry<Path, String> place : trail.entrySet()) {
            texts(out, place.getKey().toString(), place.getValue());
        }
        texts(out, site);
        out.writeInt(outcome.entries());
        out.writeInt(outcome.files());
        out.writeInt(outcome.problems().size());
        for (Problem p : outcome.problems()) {
            texts(out, p.severity().name(), p.file(), p.place(), p.what(), p.hint());
        }
    }

    private static void texts(DataOutputStream out, String... texts) throws IOException {
        for (String text : texts) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            out.writeInt(bytes.length);
            out.write(bytes);
        }
    }

    private static String text(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("damaged");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }
}
