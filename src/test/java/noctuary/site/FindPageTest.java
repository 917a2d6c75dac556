package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** Finding by words and by facts, from a disk, with the keyboard alone; numbers are held against the downloads. */
@Tag("browser")
class FindPageTest {
    @TempDir
    static Path site;

    private static ChromeDriver browser;

    @BeforeAll
    static void open() throws IOException {
        browser = Chromium.open();
        FixtureSite.write(site, true, false);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @BeforeEach
    void visit() {
        browser.get(site.resolve("find/index.html").toUri().toString());
        await(() -> field("find-words").isDisplayed());
        browser.executeScript("document.getElementById('find-numbers').open = true");
    }

    @Test
    void withoutItsScriptThePageIsATableAndAListOfNames() throws IOException {
        var page = Jsoup.parse(Files.readString(site.resolve("find/index.html")));
        assertThat(page.select("main input, main select, main button"))
                .isNotEmpty()
                .allSatisfy(control -> assertThat(control.closest("[hidden]")).isNotNull());
        assertThat(page.select("#found tbody tr")).hasSize(5);
        assertThat(page.select(".names").text()).contains("NGC 6888", "Heron, the long tube");
    }

    @Test
    void aBoundLeavesTheEntriesWhoseDownloadedNumberKeepsIt() throws IOException {
        type("find-exposure-least", "1.5");
        assertThat(shown()).isEqualTo(downloaded("exposureSeconds", seconds -> seconds / 3600 >= 1.5));
        type("find-exposure-least", "");
        type("find-fwhm-most", "3,5");
        assertThat(shown()).isEqualTo(downloaded("fwhmArcsec", width -> width <= 3.5));
    }

    @Test
    void boundsAndChoicesNarrowTogetherAndShowAllUndoesThem() throws IOException {
        type("find-from", "2025-06");
        field("find-rig").sendKeys("Heron");
        assertThat(shown()).containsExactly("Two nights on the dumbbell", "The crescent, longer tube, same terrace");
        assertThat(said()).isEqualTo("2 of 5 entries");
        field("find-clear").click();
        await(() -> shown().size() == 5);
        assertThat(said()).isEmpty();
    }

    @Test
    void aWordIsLookedForInNotesAndNamesAndAMonthIsAWord() {
        type("find-words", "6888");
        assertThat(shown()).contains("The crescent, longer tube, same terrace");
        assertThat(names()).contains("NGC 6888");
        type("find-words", "june 2025");
        assertThat(shown()).containsExactly("The crescent, longer tube, same terrace");
        type("find-words", "nowhere-at-all");
        assertThat(shown()).isEmpty();
        assertThat(said()).isEqualTo("0 of 5 entries");
    }

    @Test
    void whatIsNoNumberIsSaid() {
        type("find-fwhm-most", "sharp");
        assertThat(said()).isEqualTo("“sharp” is no number; write one such as 2.5");
        assertThat(field("find-fwhm-most").getAttribute("aria-invalid")).isEqualTo("true");
    }

    @Test
    void theKeyboardAloneWalksFromTheBoxToAResultAndBack() {
        WebElement box = field("find-words");
        box.sendKeys("june 2025");
        await(() -> shown().size() == 1);
        box.sendKeys(Keys.ARROW_DOWN);
        assertThat(browser.switchTo().activeElement().getText()).isEqualTo("The crescent, longer tube, same terrace");
        browser.switchTo().activeElement().sendKeys(Keys.ESCAPE);
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("find-words");
        box.sendKeys(Keys.ARROW_DOWN);
        browser.switchTo().activeElement().sendKeys(Keys.ENTER);
        await(() -> browser.getCurrentUrl().endsWith("entries/long-tube/index.html"));
    }

    private static WebElement field(String id) {
        return browser.findElement(By.id(id));
    }

    private static void type(String id, String text) {
        WebElement field = field(id);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text);
        for (int tenths = 0; tenths < 4; tenths++) {
            pause();
        }
    }

    private static List<String> shown() {
        return visible("#found tbody th a");
    }

    private static List<String> names() {
        return visible(".names li > a");
    }

    private static List<String> visible(String what) {
        return browser.findElements(By.cssSelector(what)).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
    }

    private static String said() {
        return browser.findElement(By.cssSelector("#find .shown")).getText();
    }

    private static void await(BooleanSupplier held) {
        for (int tries = 0; tries < 50 && !held.getAsBoolean(); tries++) {
            pause();
        }
        assertThat(held.getAsBoolean()).isTrue();
    }

    private static void pause() {
        browser.executeAsyncScript("setTimeout(arguments[0], 100)");
    }

    /** Titles of {@code data/entries.csv} whose cell holds, in its order. */
    private static List<String> downloaded(String column, Predicate<Double> holds) throws IOException {
        List<String> lines = Files.readAllLines(site.resolve("data/entries.csv"));
        int at = Arrays.asList(lines.get(0).split(",")).indexOf(column);
        return lines.stream()
                .skip(1)
                .map(FindPageTest::cells)
                .filter(cells -> !cells.get(at).isEmpty() && holds.test(Double.valueOf(cells.get(at))))
                .map(cells -> cells.get(1))
                .toList();
    }

    /** RFC 4180: a cell in quotes may hold commas, and quotes twice. */
    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .map(cell -> cell.startsWith("\"")
                        ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"")
                        : cell)
                .toList();
    }
}
