package noctuary.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import noctuary.journal.Measuring;
import noctuary.journal.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description = "Measures frames, stacks or pictures, each by itself, and prints what was found.",
        footer = {
            "",
            "FWHM is that of the star's own profile, before the pixel integrates it: the",
            "median over the measured stars, with the 16th and 84th percentiles. What is",
            "not known is left out (null in JSON)."
        })
final class MeasureCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "FITS (.fits .fit .fts .fz .gz), PNG, JPEG or TIFF")
    private List<Path> files;

    @Option(names = "--json", description = "one JSON object a line, one per file, in the order given")
    private boolean json;

    @Option(names = "--stars", description = "with --json: adds every measured star")
    private boolean stars;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws RefusedException {
        if (stars && !json) {
            throw new RefusedException("--stars goes with --json");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (files.stream().noneMatch(Files::exists)) {
            throw new RefusedException(files.get(0) + " does not exist");
        }
        AtomicBoolean troubled = new AtomicBoolean();
        Measuring.measure(files, measured -> {
            out.print(json ? measured.json(stars) + "\n" : Plain.text(measured.table()));
            out.flush();
            troubled.compareAndSet(false, measured.troubled());
        });
        return troubled.get() ? 1 : 0;
    }
}
