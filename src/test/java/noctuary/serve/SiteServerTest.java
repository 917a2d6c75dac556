package noctuary.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class SiteServerTest {
    @TempDir
    private Path folder;

    private Path site;
    private SiteServer server;

    @BeforeEach
    void serve() throws IOException {
        site = Files.createDirectories(folder.resolve("output"));
        Files.writeString(site.resolve("index.html"), "<html><body>Journal</body></html>");
        Files.createDirectories(site.resolve("entries/m27"));
        Files.writeString(site.resolve("entries/m27/index.html"), "<html><body>M 27</body></html>");
        Files.writeString(site.resolve(".noctuary-site"), "mark");
        Files.writeString(folder.resolve("secret.txt"), "terrace");
        server = SiteServer.start(site, 0);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    /** A call as it goes over the wire, so that nothing tidies path or host on the way. */
    private String call(String method, String path, String host) throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), server.address().getPort())) {
            OutputStream out = socket.getOutputStream();
            out.write((method + " " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String get(String path) throws IOException {
        return call("GET", path, "127.0.0.1:" + server.address().getPort());
    }

    @Test
    void pagesComeWithTheScriptThatLoadsThemAgain() throws IOException {
        assertThat(get("/")).startsWith("HTTP/1.1 200").contains("Journal", "/-/watch.js", "no-store", "nosniff");
        assertThat(get("/entries/m27/")).contains("M 27");
        assertThat(get("/-/watch.js")).contains("text/javascript");
    }

    @Test
    void aFolderWithoutItsSlashLeadsToTheFolder() throws IOException {
        assertThat(get("/entries/m27")).startsWith("HTTP/1.1 301").containsIgnoringCase("Location: /entries/m27/");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../secret.txt",
                "/%2e%2e/secret.txt",
                "/entries/..%2f..%2f..%2fsecret.txt",
                "/.noctuary-site",
                "//etc/passwd",
                "/etc%00/passwd",
                "/nothing.html",
                "/link.txt"
            })
    void nothingOutsideTheSiteIsThere(String path) throws IOException {
        Files.createSymbolicLink(site.resolve("link.txt"), folder.resolve("secret.txt"));
        assertThat(get(path)).doesNotStartWith("HTTP/1.1 200").doesNotContain("terrace", "mark", "root:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"example.org", "127.0.0.1", "localhost:1", "127.0.0.1.example.org:8040"})
    void callersByAForeignNameAreRefused(String host) throws IOException {
        assertThat(call("GET", "/", host)).startsWith("HTTP/1.1 403").doesNotContain("Journal");
    }

    @Test
    void onlyReadingIsAllowed() throws IOException {
        String host = "localhost:" + server.address().getPort();
        assertThat(call("POST", "/", host)).startsWith("HTTP/1.1 405");
        assertThat(call("HEAD", "/", host)).startsWith("HTTP/1.1 200").doesNotContain("Journal");
    }

    @Test
    void aWaitingPageHearsOfTheChange() throws Exception {
        CompletableFuture<String> waiting = CompletableFuture.supplyAsync(() -> {
            try {
                return get("/-/wait.js?seen=0");
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
        Thread.sleep(200);
        assertThat(waiting).isNotDone();
        server.changed();
        assertThat(waiting.get(10, TimeUnit.SECONDS)).contains("location.reload");
        assertThat(get("/-/wait.js?seen=0")).contains("location.reload");
    }
}
