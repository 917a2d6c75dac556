package noctuary.fuzz;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import noctuary.serve.SiteServer;

/** Damaged calls to the server over loopback: an answer of its own, or none; never a file from outside the site. */
final class RequestSubject implements Subject {
    private static final String SECRET = "BEGIN-PRIVATE-KEY";
    /** Stands for the port until the call is damaged, so that a seed is the same call whatever port is free. */
    private static final String PORT = "54321";
    /** What the Java library's own server says of an address that is none, before any code of ours is asked. */
    private static final String NO_ADDRESS = "<h1>400 Bad Request</h1>URISyntaxException thrown";

    private static final int PATIENCE_MS = 8_000;
    private static final List<String> PATHS = List.of(
            "/",
            "/index.html",
            "/entries/a",
            "/entries/a/",
            "/-/watch.js",
            "/-/wait.js?seen=7",
            "/../secret.txt",
            "/%2e%2e/secret.txt",
            "/entries/..%2f..%2fsecret.txt",
            "/link.txt",
            "/.noctuary-site",
            "//etc/passwd",
            "/a%00b",
            "http://127.0.0.1/index.html",
            "mailto:x",
            "*",
            "/" + "a".repeat(300),
            "/" + "a/".repeat(3_000));

    private final SiteServer server;
    private final int port;

    RequestSubject(Path folder) throws IOException {
        Path site = Files.createDirectories(folder.resolve("served"));
        Files.createDirectories(site.resolve("entries/a"));
        Files.writeString(site.resolve("index.html"), "<html><body>Journal</body></html>");
        Files.writeString(site.resolve("entries/a/index.html"), "<html><body>M 27</body></html>");
        Files.writeString(site.resolve(".noctuary-site"), SECRET);
        Path secret = Files.writeString(folder.resolve("secret.txt"), SECRET);
        Files.createSymbolicLink(site.resolve("link.txt"), secret);
        server = SiteServer.start(site, 0);
        port = server.address().getPort();
    }

    @Override
    public String name() {
        return "requests";
    }

    @Override
    public int attack(long seed) throws Throwable {
        Random random = new Random(seed);
        String sound = (random.nextInt(4) == 0 ? "HEAD " : "GET ") + PATHS.get(random.nextInt(PATHS.size()))
                + " HTTP/1.1\r\nHost: 127.0.0.1:" + PORT + "\r\nConnection: close\r\nAccept: text/html\r\n\r\n";
        byte[] call = sound.getBytes(StandardCharsets.ISO_8859_1);
        byte[] damaged = random.nextInt(10) == 0 ? call : new Mutation(random).of(call);
        String text = new String(damaged, StandardCharsets.ISO_8859_1).replace(PORT, "" + port);
        byte[] mutant = text.getBytes(StandardCharsets.ISO_8859_1);
        String answer = answer(mutant).replace(NO_ADDRESS, "");
        boolean known = answer.isEmpty()
                || answer.matches("(?s)HTTP/1\\.1 (200|100|301|400|403|404|405|411|413|414|431|501|505)\\b.*");
        if (!known || answer.contains(SECRET) || answer.contains("root:") || answer.contains("Exception")) {
            throw new IllegalStateException(
                    "answered " + answer.substring(0, Math.min(200, answer.length())) + " to " + text);
        }
        return 1;
    }

    /** All that comes back; empty also when the server hangs up. */
    private String answer(byte[] call) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE_MS);
            OutputStream out = socket.getOutputStream();
            try {
                out.write(call);
                out.flush();
                socket.shutdownOutput();
                return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            } catch (java.net.SocketTimeoutException e) {
                throw e;
            } catch (IOException hungUp) {
                return "";
            }
        }
    }
}
