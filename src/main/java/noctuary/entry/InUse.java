package noctuary.entry;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The time in which a rig is used: {@code 2025-05-20 to 2026-01-31} or {@code 2025-05-20 on}. */
record InUse(LocalDate from, Optional<LocalDate> to) {
    private static final Pattern FORM = Pattern.compile("(\\S+)\\s+(?:on|to\\s+(\\S+))");

    static InUse of(String text) throws Unfit {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new Unfit(
                    Margin.quoted(text) + " is not a time of use",
                    "write \"2025-05-20 to 2026-01-31\", or \"2025-05-20 on\"");
        }
        LocalDate from = Forms.date(matcher.group(1));
        if (matcher.group(2) == null) {
            return new InUse(from, Optional.empty());
        }
        LocalDate to = Forms.date(matcher.group(2));
        if (to.isBefore(from)) {
            throw new Unfit(Margin.quoted(text) + " ends before it begins", "swap the two dates");
        }
        return new InUse(from, Optional.of(to));
    }
}
