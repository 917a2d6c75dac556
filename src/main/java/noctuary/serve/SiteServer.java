package noctuary.serve;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Serves the files of one folder to this machine alone. */
public final class SiteServer implements AutoCloseable {
    /** Open pages each keep one thread waiting for the next change. */
    private static final int THREADS = 32;

    private final HttpServer server;
    private final ExecutorService workers;
    private final Edition edition = new Edition();

    private SiteServer(HttpServer server, ExecutorService workers) {
        this.server = server;
        this.workers = workers;
    }

    /**
     * @param site need not be there yet
     * @param port 0 for any that is free
     * @throws java.net.BindException when the port is taken
     */
    public static SiteServer start(Path site, int port) throws IOException {
        InetSocketAddress loopback = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
        HttpServer server = HttpServer.create(loopback, 0);
        ExecutorService workers = Executors.newFixedThreadPool(THREADS, SiteServer::daemon);
        SiteServer started = new SiteServer(server, workers);
        server.setExecutor(workers);
        server.createContext(
                "/", new SiteHandler(site, started.edition, server.getAddress().getPort()));
        server.start();
        return started;
    }

    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    /** Tells every open page to load again. */
    public void changed() {
        edition.next();
    }

    @Override
    public void close() {
        server.stop(0);
        workers.shutdownNow();
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "site");
        thread.setDaemon(true);
        return thread;
    }
}
