package noctuary.site;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** Debian's Chromium without a window, and the page kinds of the fixture's site. */
public final class Chromium {
    static final List<String> KINDS = List.of(
            "index.html",
            "entries/long-tube/index.html",
            "entries/odd/index.html",
            "targets/index.html",
            "targets/ngc-6888/index.html",
            "rigs/index.html",
            "rigs/heron/index.html",
            "changes/index.html",
            "changes/rig-heron/index.html",
            "choices/index.html",
            "nights/index.html",
            "lessons/index.html",
            "lessons/sheet.html",
            "method/index.html",
            "data/index.html",
            "find/index.html");

    private static final Path BINARY = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private Chromium() {}

    /** The test is skipped where Chromium and its driver are not installed. */
    public static ChromeDriver open() {
        assumeTrue(
                Files.isExecutable(BINARY) && Files.isExecutable(DRIVER),
                "no Chromium with its driver here: apt-get install chromium chromium-driver");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BINARY.toFile());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--window-size=1440,900");
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(DRIVER.toFile())
                        .build(),
                options);
    }

    /** @param width of the view in CSS pixels; 0 for the window's own */
    public static void narrow(ChromeDriver browser, int width) {
        Map<String, Object> size =
                Map.of("width", width, "height", width == 0 ? 0 : 800, "deviceScaleFactor", 0, "mobile", false);
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", size);
    }
}
