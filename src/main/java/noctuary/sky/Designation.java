package noctuary.sky;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers of the lists of deep-sky objects, however written: {@code m31}, {@code Messier 31}, {@code NGC_0224}. */
final class Designation {
    private static final int LAST_MESSIER = 110;
    private static final String GAP = "[\\s_-]*";
    private static final String NUMBER = "0*([1-9]\\d{0,3})(?![\\d.])";

    private record Form(Pattern pattern, String prefix) {
        static Form of(String spelling, String prefix) {
            return new Form(Pattern.compile(spelling + GAP + NUMBER), prefix);
        }
    }

    private static final List<Form> FORMS = List.of(
            Form.of("(?:messier|m)", "M "),
            Form.of("ngc", "NGC "),
            Form.of("ic", "IC "),
            Form.of("sh(?:arpless)?" + GAP + "2[\\s_-]+", "Sh2-"),
            Form.of("vdb", "vdB "),
            Form.of("abell", "Abell "),
            Form.of("(?:barnard|b)", "Barnard "),
            Form.of("(?:melotte|mel)", "Mel "),
            Form.of("lbn", "LBN "),
            Form.of("ldn", "LDN "));

    private Designation() {}

    /** A designation and what the text says besides. */
    record Found(String name, String rest) {}

    /** The designation with which the text begins or ends. */
    static Optional<Found> in(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (Form form : FORMS) {
            Matcher m = form.pattern().matcher(lower);
            while (m.find()) {
                boolean begins = m.start() == 0;
                boolean ends = m.end() == lower.length();
                boolean apart = (begins || !Character.isLetterOrDigit(lower.charAt(m.start() - 1)))
                        && (ends || !Character.isLetterOrDigit(lower.charAt(m.end())));
                if ((begins || ends) && apart && exists(form, m.group(1))) {
                    String rest = text.substring(0, m.start()) + text.substring(m.end());
                    return Optional.of(new Found(form.prefix() + m.group(1), rest));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean exists(Form form, String number) {
        return !form.prefix().equals("M ") || Integer.parseInt(number) <= LAST_MESSIER;
    }
}
