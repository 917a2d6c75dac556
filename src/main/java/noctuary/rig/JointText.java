package noctuary.rig;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a joint as keepers write it: {@code M48x0.75 male}, {@code 2 in x 24 tpi female},
 * {@code 1.25 in push-fit male}. Never fails: what it cannot read comes back unread, and the checks say so.
 */
final class JointText {
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final String INCHES = "(?:(\\d+)[ -])?(\\d+(?:[.,]\\d+)?)(?:/(\\d+))?\\s*(?:in|inch|inches|\"|″)";
    private static final Pattern METRIC = Pattern.compile("m\\s*" + NUMBER + "\\s*[x×*]\\s*" + NUMBER + "(?:\\s*mm)?");
    private static final Pattern UNIFIED =
            Pattern.compile(INCHES + "\\s*[x×,-]?\\s*" + NUMBER + "\\s*(?:tpi|threads per inch)");
    private static final Pattern PUSH_FIT = Pattern.compile(INCHES + "\\s*(?:push[ -]?fit|barrel|slip[ -]?fit)");
    private static final Pattern MALE = Pattern.compile("\\b(?:male|external|outer|m)\\W*$");
    private static final Pattern FEMALE = Pattern.compile("\\b(?:female|internal|inner|f)\\W*$");

    private JointText() {}

    static RigSpec.Joint read(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        Matcher female = FEMALE.matcher(lower);
        Matcher male = MALE.matcher(lower);
        boolean isMale = male.find();
        if (!isMale && !female.find()) {
            return unread(text);
        }
        String form = lower.substring(0, isMale ? male.start() : female.start()).replaceAll("[\\s,(]+$", "");
        return form(text, form, isMale);
    }

    private static RigSpec.Joint form(String text, String form, boolean male) {
        Matcher metric = METRIC.matcher(form);
        if (metric.matches()) {
            return joint(text, decimal(metric.group(1)), decimal(metric.group(2)), male);
        }
        Matcher unified = UNIFIED.matcher(form);
        if (unified.matches()) {
            return joint(text, inchesMm(unified), Threads.MM_PER_INCH / decimal(unified.group(4)), male);
        }
        Matcher pushFit = PUSH_FIT.matcher(form);
        if (pushFit.matches()) {
            return joint(text, inchesMm(pushFit), 0, male);
        }
        return unread(text);
    }

    private static RigSpec.Joint joint(String text, double diameterMm, double pitchMm, boolean male) {
        boolean possible = diameterMm > 0 && diameterMm < 1000 && pitchMm >= 0 && pitchMm < diameterMm;
        return possible ? new RigSpec.Joint(text, diameterMm, pitchMm, male) : unread(text);
    }

    private static RigSpec.Joint unread(String text) {
        return new RigSpec.Joint(text, Double.NaN, Double.NaN, false);
    }

    private static double inchesMm(Matcher m) {
        double whole = m.group(1) == null ? 0 : decimal(m.group(1));
        double part = decimal(m.group(2)) / (m.group(3) == null ? 1 : decimal(m.group(3)));
        return (whole + part) * Threads.MM_PER_INCH;
    }

    private static double decimal(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
