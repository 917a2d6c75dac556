package noctuary.fuzz;

import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Notes with every key, each value a {@link Nasties}. */
final class HostileNotes {
    private final Random random;
    private final Nasties nasties;

    HostileNotes(Random random) {
        this.random = random;
        this.nasties = new Nasties(random);
    }

    private String word() {
        return Nasties.quoted(nasties.words());
    }

    private String number(String unit) {
        return nasties.number() + " " + unit;
    }

    /** As many as chance says, up to three. */
    private String several(String item) {
        return IntStream.range(0, random.nextInt(3) + 1)
                .mapToObj(i -> filled(item))
                .collect(Collectors.joining(", ", "[", "]"));
    }

    /** W a word, N a number, D a date, each behind a percent sign. */
    private String filled(String form) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < form.length(); i++) {
            char c = form.charAt(i);
            if (c != '%') {
                text.append(c);
                continue;
            }
            char kind = form.charAt(++i);
            text.append(kind == 'W' ? word() : kind == 'N' ? nasties.number() : nasties.date());
        }
        return text.toString();
    }

    String settings() {
        return "title: " + word() + "\nkeeper: " + word()
                + "\nsite: terrace\nrig: heron\npublish: {coordinates: " + (random.nextBoolean() ? "yes" : "no")
                + ", file names: " + (random.nextBoolean() ? "yes" : "no") + "}\n";
    }

    String site() {
        return "---\nname: " + word() + "\nlatitude: " + number("deg") + "\nlongitude: " + number("deg")
                + "\nelevation: " + number("m") + "\ntime zone: Europe/Rome\n---\n" + body();
    }

    String rig() {
        return "---\nname: " + word() + "\n"
                + filled("in use: %D on\n")
                + filled(
                        "optics: {aperture: %N mm, focal length: %N mm, reducer: %N, back focus: %N mm, image circle: %N mm}\n")
                + filled(
                        "camera: {pixel: %N µm, width: 5120, height: 3840, read noise: %N e, gain: %N e/ADU, full well: %N e}\n")
                + "train: " + several("{part: %W, length: %N mm, front: %W, rear: %W}") + "\n"
                + filled("mount: {name: %W, capacity: %N kg}\n")
                + "payload: " + several("{part: %W, mass: %N kg}") + "\n"
                + "cost: " + several("{part: %W, price: %N EUR}") + "\n---\n" + body();
    }

    String entry(int i) {
        String measured =
                i < 3 ? "frames: [f.fits]\n" : "exposure: " + several("{count: 12, seconds: %N, filter: %W}") + "\n";
        return "---\ntitle: " + word() + "\ntarget: " + word() + "\nrig: " + (random.nextBoolean() ? "heron" : "wren")
                + "\n" + (i < 3 ? "" : "night: " + nasties.date() + "\n") + measured
                + filled("guiding: {rms: %N arcsec}\n")
                + "lost: " + several("{minutes: %N, cause: %W, note: %W}") + "\n"
                + "changes: " + several("%W") + "\n"
                + filled("versions: [{name: %W, from: stack, steps: [%W: 0.5, %W: %W, %W]}]\n")
                + "lessons: " + several("{about: %W, do: %W}") + "\n---\n" + body();
    }

    private String body() {
        return "# " + nasties.words() + "\n\n" + nasties.words() + "\n\n- " + nasties.words() + "\n\n| "
                + nasties.word()
                + " | b |\n|---|---|\n| " + nasties.word() + " | c |\n\n[" + nasties.word() + "](" + nasties.word()
                + ") ![" + nasties.word()
                + "](x.png)\n";
    }
}
