package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.measure.TargetSheet;
import noctuary.site.page.TargetPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers, text and addresses are printed. */
class PrintTest {
    private static final char SPACE = '\u00a0';

    @ParameterizedTest
    @CsvSource({"45, 45_s", "90.5, 90.5_s", "120, 2_min", "3600, 1_h", "15120, 4_h 12_min", "359970, 100_h"})
    void durationsReadLikeDurations(double seconds, String expected) {
        assertThat(Numerals.duration(seconds)).isEqualTo(expected.replace('_', SPACE));
    }

    @Test
    void quantitiesCarryErrorAndUnit() {
        assertThat(Numerals.of(Quantity.of(2.7, Unit.ARCSECOND, 0.03))).isEqualTo("2.70 ± 0.03" + SPACE + "arcsec");
        assertThat(Numerals.of(Quantity.of(-10, Unit.CELSIUS))).isEqualTo("−10.0" + SPACE + "°C");
        assertThat(Numerals.of(Quantity.of(1.853, Unit.DEGREE))).isEqualTo("1.853°");
        assertThat(Numerals.of(Quantity.of(2.1234, Unit.PIXEL, 0.004))).isEqualTo("2.123 ± 0.004" + SPACE + "px");
        assertThat(Numerals.fixed(-0.0001, 2)).isEqualTo("0.00");
    }

    @Test
    void pathsOfTheMachineAreCutFromSentences() {
        Discretion told = new Discretion(Fixture.content(true).journal());
        assertThat(told.text(Fixture.HOME + "/entries/a/lights/x.fits cannot be read"))
                .isEqualTo("entries/a/lights/x.fits cannot be read");
        assertThat(told.text("see /home/planteduser/frames/2025/x.fits")).isEqualTo("see main:2025/x.fits");
        assertThat(told.text("in /var/data/x.fits and D:\\data\\y.fits")).isEqualTo("in x.fits and y.fits");
        assertThat(told.text("1.303 arcsec/px, lights/x.fits, and/or 3 / 4"))
                .isEqualTo("1.303 arcsec/px, lights/x.fits, and/or 3 / 4");
    }

    @Test
    void namesOfFramesAreToldOnlyWhenPublished() {
        Discretion secret = new Discretion(Fixture.content(false).journal());
        assertThat(secret.text("lights/IMG_0042.FIT.gz is empty")).isEqualTo("a file is empty");
        assertThat(secret.file("entries/m27/entry.md")).isEqualTo("entries/m27/entry.md");
    }

    /** A picture's words of 250,000 blanks, which markdown keeps: once 30 thousand million steps. */
    @Test
    void blanksInAPictureAreReadOnce() {
        String blanks = " ".repeat(250_000);
        String html = "<img src=\"a.png\" alt=\"a" + blanks + "b\" /><p>" + blanks + "/";
        assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThat(NoteBody.under(2, html).html()).isEqualTo(html.replace(" />", ">")));
    }

    @Test
    void headingsOfANoteMoveBelowThePagesOwn() {
        assertThat(NoteBody.under(2, "<h1 id=\"a\">A</h1><h2>B</h2><p>h1</p>").html())
                .isEqualTo("<h3 id=\"a\">A</h3><h4>B</h4><p>h1</p>");
        assertThat(NoteBody.under(2, "<h2>B</h2><h3>C</h3>").html()).isEqualTo("<h3>B</h3><h4>C</h4>");
        assertThat(NoteBody.under(
                                2,
                                "<p><img src=\"files/a.png\" alt=\"A\" /> <img src=\"files/b.png\" alt=\"B\" /></p>",
                                Map.of("files/a.png", "it ends <too> early"))
                        .html())
                .isEqualTo("<p><span class=\"why\">The picture “A” cannot be shown: it ends &lt;too&gt; early.</span>"
                        + " <img src=\"files/b.png\" alt=\"B\"></p>");
        assertThat(NoteBody.under(2, "<p>plain</p><hr /><img src=\"a.png\" alt=\"\" />")
                        .html())
                .isEqualTo("<p>plain</p><hr><img src=\"a.png\" alt=\"\">");
    }

    @Test
    void addressesAreRelativeAndEncoded() {
        assertThat(Address.entry("a").to(Address.JOURNAL)).isEqualTo("../../index.html");
        assertThat(Address.JOURNAL.to(Address.entry("50 % off #1")))
                .isEqualTo("entries/50%20%25%20off%20%231/index.html");
    }

    /** SVG turns clockwise for positive angles, the sheet counts counter-clockwise. */
    @Test
    void anAttemptIsScaledAndTurnedOntoTheReference() {
        Ledger ledger = new Ledger(Fixture.content(true));
        TargetSheet crescent = ledger.content().targets().get(1);
        Alignments alignments = new Alignments(ledger, Address.target("ngc-6888"), crescent);
        TargetPage.View view = alignments.view(
                crescent.attempts().get(0), ledger.entry("short-tube").orElseThrow());
        assertThat(view.width()).isEqualTo("7702.016");
        assertThat(view.transform()).isEqualTo("rotate(-12.4) translate(-3851.008 -2888.256)");
        assertThat(view.viewBox()).isEqualTo("-2560 -1920 5120 3840");
        assertThat(alignments.patch()).isEqualTo("1.85° × 1.39°");
    }

    @Test
    void anUnmatchedAttemptSaysSo() {
        Ledger ledger = new Ledger(Fixture.content(true));
        OptionalDouble absent = OptionalDouble.empty();
        TargetSheet.Attempt lost = new TargetSheet.Attempt("short-tube", 0, absent, absent, absent, false);
        TargetSheet.Attempt reference =
                ledger.content().targets().get(1).attempts().get(1);
        TargetSheet target = new TargetSheet("not-laid", "NGC 6888", "long-tube", List.of(lost, reference));
        Alignments alignments = new Alignments(ledger, Address.target("ngc-6888"), target);
        assertThat(alignments.laid(lost, ledger.entry("short-tube").orElseThrow()))
                .isEqualTo("Its stars did not match the reference's: scale from the image scales, not turned.");
    }
}
