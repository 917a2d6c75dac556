package noctuary.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shredzone.commons.suncalc.SunPosition;

/** The planned nights could have happened. */
class PlanTest {
    private final List<PlannedEntry> plan = Plan.read();

    /** Rough boxes well inside the borders of Delporte (1930): RA from, to; declination from, to, in degrees. */
    private static final Map<String, double[]> CONSTELLATION = Map.ofEntries(
            Map.entry("M27", new double[] {286, 322, 19.5, 27}),
            Map.entry("M57", new double[] {274, 290, 27, 45}),
            Map.entry("NGC 6888", new double[] {292, 325, 29, 50}),
            Map.entry("NGC 7000", new double[] {292, 325, 29, 50}),
            Map.entry("M31", new double[] {0, 30, 33, 48}),
            Map.entry("M33", new double[] {23, 40, 27, 35}),
            Map.entry("M51", new double[] {182, 211, 30, 50}),
            Map.entry("M81", new double[] {140, 175, 62, 72}),
            Map.entry("M82", new double[] {140, 175, 62, 72}),
            Map.entry("NGC 891", new double[] {27, 39, 37, 50}),
            Map.entry("M42", new double[] {72, 92, -10, 10}),
            Map.entry("M45", new double[] {52, 88, 16, 28}),
            Map.entry("M13", new double[] {238, 280, 28, 48}));

    @Test
    void everyTargetLiesInItsConstellation() {
        for (PlannedEntry entry : plan) {
            DemoSky sky = DemoSky.towards(entry.target());
            double[] box = CONSTELLATION.get(entry.target());
            assertThat(sky.raDeg()).as(entry.slug()).isBetween(box[0], box[1]);
            assertThat(sky.decDeg()).as(entry.slug()).isBetween(box[2], box[3]);
        }
    }

    @Test
    void everyExposureIsTakenAboveTwentyDegreesInTheDark() {
        for (PlannedEntry entry : plan) {
            DemoSite site = DemoSite.of(entry.site());
            for (int frame : new int[] {0, entry.count() / 2, entry.count() - 1}) {
                assertThat(Moment.of(entry, frame).altitudeDeg())
                        .as(entry.slug())
                        .isGreaterThan(20);
                double sun = SunPosition.compute()
                        .on(entry.startOf(frame).atZone(ZoneOffset.UTC))
                        .at(site.latitudeDeg(), site.longitudeDeg())
                        .execute()
                        .getTrueAltitude();
                assertThat(sun).as(entry.slug()).isLessThan(-12);
            }
        }
    }

    /** Meeus, Astronomical Algorithms, example 13.b: Venus from Washington, altitude 15.1249 degrees. */
    @Test
    void altitudeAgreesWithMeeus() {
        assertThat(Altitude.of(64.352133, -6.719892, 38.921389)).isCloseTo(15.1249, within(1e-4));
    }

    /** Kasten and Young (1989): 1.9943 at 30 degrees, 10.3058 at 5 degrees, from their formula. */
    @Test
    void airmassAgreesWithKastenAndYoung() {
        assertThat(Altitude.airmass(30)).isCloseTo(1.9943, within(1e-4));
        assertThat(Altitude.airmass(5)).isCloseTo(10.3058, within(1e-4));
    }

    @Test
    void theJournalHoldsWhatItPromises() {
        assertThat(plan.stream().map(PlannedEntry::target).distinct()).hasSizeGreaterThanOrEqualTo(9);
        assertThat(plan.stream().map(PlannedEntry::rig).distinct()).containsExactlyInAnyOrder("wren", "heron");
        assertThat(plan).filteredOn(e -> e.site().equals("lumera")).hasSize(3);
        assertThat(plan)
                .filteredOn(e -> DemoRig.of(e.rig()).spacingErrorMm(e.date()) < -1)
                .hasSizeGreaterThanOrEqualTo(5);
    }
}
