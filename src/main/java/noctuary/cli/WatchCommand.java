package noctuary.cli;

import java.io.PrintWriter;
import java.net.BindException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import noctuary.journal.RefusedException;
import noctuary.journal.Rendering;
import noctuary.journal.Watching;
import noctuary.serve.SiteServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        description = {
            "Renders whenever a note, rig or template is saved; open pages load again.",
            "Serves the site to this machine alone, until Ctrl-C. Frames in archive folders are",
            "looked at whenever a note changes."
        })
final class WatchCommand implements Callable<Integer> {
    @Mixin
    private JournalOption journal;

    @Mixin
    private OutputOption output;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "8040",
            description = "port on loopback, 0 for any that is free (default: ${DEFAULT-VALUE})")
    private int port;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter err = spec.commandLine().getErr();
        Path root = journal.root();
        Path site = output.site(root).toAbsolutePath().normalize();
        try (SiteServer server = serve(site)) {
            Watching.watch(root, site, ProgressLine.on(err), new Watching.Listener() {
                @Override
                public void rendered(Rendering.Outcome outcome) {
                    RenderCommand.tell(
                            outcome,
                            server.address().toString(),
                            spec.commandLine().getOut(),
                            err);
                    server.changed();
                }

                @Override
                public void failed(Exception why) {
                    err.println("noctuary: " + Failure.sentence(why) + "; the last site still stands");
                }
            });
        }
        return 0;
    }

    private SiteServer serve(Path site) throws Exception {
        if (port < 0 || port > 65_535) {
            throw new RefusedException("there is no port " + port + "; ports go from 0 to 65535");
        }
        try {
            return SiteServer.start(site, port);
        } catch (BindException e) {
            throw new RefusedException(
                    "port " + port + " is taken or not allowed; name another with --port, or --port 0");
        }
    }
}
