package noctuary.draw;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;

/**
 * One night frame by frame: small panels one above the other over the same time, each measure on its own scale.
 *
 * @param clock the clock the times are of, such as {@code UTC} or {@code local time}
 * @param panels empty ones are left out
 */
public record NightCourse(String title, String clock, List<Panel> panels, List<Event> events) implements Chart {
    public NightCourse {
        panels = panels.stream().filter(p -> !p.samples().isEmpty()).toList();
        events = events.stream().sorted(Comparator.comparing(Event::time)).toList();
    }

    /** @param samples those without a finite value are left out */
    public record Panel(String name, String unit, List<Sample> samples) {
        public Panel {
            samples = samples.stream()
                    .filter(s -> Double.isFinite(s.value()))
                    .sorted(Comparator.comparing(Sample::time))
                    .toList();
        }
    }

    public record Sample(LocalDateTime time, double value) {}

    public record Event(LocalDateTime time, String label) {}

    @Override
    public String svg(String id, Form form) {
        return new CoursePlot(this, form).draw(new Alternative(id, title, description()));
    }

    private String description() {
        if (panels.isEmpty()) {
            return "No frames measured.";
        }
        List<String> sentences = panels.stream().map(panel -> sentence(panel)).toList();
        return String.join(" ", sentences) + " Times in " + clock + ".";
    }

    private static String sentence(Panel panel) {
        List<Sample> samples = panel.samples();
        Sample first = samples.get(0);
        Sample last = samples.get(samples.size() - 1);
        Sample best =
                samples.stream().min(Comparator.comparingDouble(Sample::value)).orElseThrow();
        Sample worst =
                samples.stream().max(Comparator.comparingDouble(Sample::value)).orElseThrow();
        return panel.name() + (panel.unit().isEmpty() ? "" : " in " + panel.unit()) + ": " + samples.size()
                + " frames, first " + moment(first) + ", lowest " + moment(best) + ", highest " + moment(worst)
                + ", last " + moment(last) + ".";
    }

    private static String moment(Sample sample) {
        return Digits.significant(sample.value(), 3) + " at " + ClockTicks.clock(sample.time());
    }
}
