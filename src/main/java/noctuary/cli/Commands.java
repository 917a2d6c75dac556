package noctuary.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;

/** The commands by their names, in the order of the help. */
final class Commands {
    private static final Map<String, Class<?>> ALL = all();

    private Commands() {}

    private static Map<String, Class<?>> all() {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        all.put("begin", BeginCommand.class);
        all.put("note", NoteCommand.class);
        all.put("render", RenderCommand.class);
        all.put("watch", WatchCommand.class);
        all.put("measure", MeasureCommand.class);
        all.put("review", ReviewCommand.class);
        all.put("check", CheckCommand.class);
        all.put("generate-completion", AutoComplete.GenerateCompletion.class);
        return all;
    }

    /**
     * The program with its commands, of which a call that begins with the name of one needs no other: to read the
     * declarations of all takes longer than an empty Java takes to start.
     */
    static CommandLine under(Object program, String... args) {
        CommandLine line = new CommandLine(program);
        boolean one = args.length > 0
                && ALL.containsKey(args[0])
                && ALL.get(args[0]) != AutoComplete.GenerateCompletion.class;
        (one ? Map.<String, Class<?>>of(args[0], ALL.get(args[0])) : ALL).forEach(line::addSubcommand);
        return line;
    }
}
