package noctuary.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Answers one call: a file of the site, or whether the site has changed. Callers by another host name are refused. */
final class SiteHandler implements HttpHandler {
    private static final long PATIENCE_MS = 25_000;

    private final SiteFiles files;
    private final Edition edition;
    private final Set<String> ownNames;

    SiteHandler(Path site, Edition edition, int port) {
        this.files = new SiteFiles(site);
        this.edition = edition;
        this.ownNames = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    }

    @Override
    public void handle(HttpExchange call) throws IOException {
        try (call) {
            answer(call);
        }
    }

    private void answer(HttpExchange call) throws IOException {
        String host = call.getRequestHeaders().getFirst("Host");
        String method = call.getRequestMethod();
        String path = Optional.ofNullable(call.getRequestURI().getPath()).orElse("");
        if (host == null || !ownNames.contains(host)) {
            send(call, 403, "text/plain; charset=utf-8", text("This site is for this machine alone.\n"));
        } else if (!method.equals("GET") && !method.equals("HEAD")) {
            send(call, 405, "text/plain; charset=utf-8", text("Only GET and HEAD.\n"));
        } else if (path.equals(Reload.START)) {
            send(call, 200, "text/javascript; charset=utf-8", text(Reload.script()));
        } else if (path.equals(Reload.WAIT)) {
            wait(call);
        } else {
            file(call, path);
        }
    }

    private void wait(HttpExchange call) throws IOException {
        long seen = Reload.seen(call.getRequestURI().getQuery());
        try {
            boolean changed = edition.after(seen, PATIENCE_MS) != seen;
            send(call, 200, "text/javascript; charset=utf-8", text(changed ? Reload.AGAIN : ""));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void file(HttpExchange call, String path) throws IOException {
        long number = edition.number();
        Optional<SiteFiles.Found> found = files.find(path);
        if (found.isEmpty()) {
            send(call, 404, "text/plain; charset=utf-8", text("There is no such page.\n"));
        } else if (found.get().folderWithoutSlash()) {
            call.getResponseHeaders().set("Location", call.getRequestURI().getRawPath() + "/");
            send(call, 301, "text/plain; charset=utf-8", text("See the folder.\n"));
        } else {
            SiteFiles.Found file = found.get();
            byte[] bytes = file.isPage() ? Reload.into(file.bytes(), number) : file.bytes();
            send(call, 200, file.type(), bytes);
        }
    }

    private static void send(HttpExchange call, int status, String type, byte[] body) throws IOException {
        var headers = call.getResponseHeaders();
        headers.set("Content-Type", type);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        if (call.getRequestMethod().equals("HEAD")) {
            call.sendResponseHeaders(status, -1);
            return;
        }
        call.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
        try (OutputStream out = call.getResponseBody()) {
            out.write(body);
        }
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
