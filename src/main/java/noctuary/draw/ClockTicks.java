package noctuary.draw;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Ticks on an axis of clock time within a night or a few, counted in seconds since 1970 of whatever clock is meant. */
final class ClockTicks {
    private static final int[] STEP_MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440, 2880, 10080};

    private ClockTicks() {}

    static double seconds(LocalDateTime time) {
        return time.toEpochSecond(ZoneOffset.UTC);
    }

    /** Such as 23:40. */
    static String clock(LocalDateTime time) {
        return pad(time.getHour()) + ":" + pad(time.getMinute());
    }

    /**
     * At most {@code most} ticks within the range where the steps allow it; the date stands under the first of a day.
     */
    static List<TimeTick> between(LocalDateTime from, LocalDateTime to, int most) {
        long start = from.toEpochSecond(ZoneOffset.UTC);
        long end = to.toEpochSecond(ZoneOffset.UTC);
        long step = step(end - start, most);
        List<TimeTick> ticks = new ArrayList<>();
        int day = 0;
        for (long at = -Math.floorDiv(-start, step) * step; at <= end; at += step) {
            LocalDateTime time = LocalDateTime.ofEpochSecond(at, 0, ZoneOffset.UTC);
            String under = time.getDayOfYear() == day ? "" : DateTicks.shortDay(time.toLocalDate());
            ticks.add(new TimeTick(at, clock(time), under));
            day = time.getDayOfYear();
        }
        return ticks;
    }

    private static long step(long spanSeconds, int most) {
        for (int minutes : STEP_MINUTES) {
            if (spanSeconds / (minutes * 60L) + 1 <= most) {
                return minutes * 60L;
            }
        }
        return STEP_MINUTES[STEP_MINUTES.length - 1] * 60L;
    }

    private static String pad(int value) {
        return value < 10 ? "0" + value : "" + value;
    }
}
