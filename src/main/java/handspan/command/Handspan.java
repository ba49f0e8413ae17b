package handspan.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The program. */
@Command(
        name = "handspan",
        mixinStandardHelpOptions = true,
        versionProvider = Handspan.Version.class,
        description = "Makes a home-made touchless instrument playable, in tune and dependable.",
        synopsisSubcommandLabel = "VERB",
        footer = {
            "",
            "SOURCE is a serial port (/dev/ttyACM0, COM3), take:FILE or sim:NAME.",
            "Exit codes: 0 done; 1 the verdict is no, time-out or cancel; 2 usage; 3 instrument or network; 4 file or unknown"
                    + " room; 5 a mistake in this program."
        },
        subcommands = {
            DemoVerb.class,
            PortsVerb.class,
            WatchVerb.class,
            SurveyVerb.class,
            CalibrateVerb.class,
            TuneVerb.class,
            LevelVerb.class,
            SendVerb.class,
            MapVerb.class,
            StripVerb.class,
            ReportVerb.class,
            PlayVerb.class,
            PracticeVerb.class,
            ProgressVerb.class,
            HearVerb.class,
            WindowVerb.class,
            CheckVerb.class,
            RecordVerb.class,
            RoomsVerb.class,
            ScalesVerb.class,
            AdviseVerb.class,
            HelpVerb.class
        })
public final class Handspan implements Runnable {
    /** Verbs that draw into files alone. */
    private static final List<String> DRAWING = List.of("strip", "advise", "report", "progress");

    private final PrintStream out;
    private final PrintStream err;
    private final InputStream in;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /** As a shell starts it. */
    Handspan() {
        this(System.in, System.out, System.err);
    }

    Handspan(InputStream in, PrintStream out, PrintStream err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /** Starts the program and ends it with the exit code of its verb. */
    public static void main(String[] args) {
        List<String> words = List.of(args);
        if (DRAWING.contains(words.isEmpty() ? "" : words.get(0)) || words.contains("--no-window")) {
            // what draws without a window needs no screen, and a stale DISPLAY would stop it
            System.setProperty("java.awt.headless", "true");
        }
        System.exit(run(words, System.in, System.out, System.err));
    }

    /**
     * Runs one command line.
     *
     * @param args verb and options
     * @param in standard input: keys while a verb runs
     * @param out standard output
     * @param err standard error
     * @return the exit code
     */
    static int run(List<String> args, InputStream in, PrintStream out, PrintStream err) {
        CommandLine line = new CommandLine(new Handspan(in, out, err));
        line.setOut(new java.io.PrintWriter(out, true, java.nio.charset.StandardCharsets.UTF_8));
        line.setErr(new java.io.PrintWriter(err, true, java.nio.charset.StandardCharsets.UTF_8));
        line.setUsageHelpWidth(100);
        line.setExecutionExceptionHandler((exception, command, parsed) -> {
            err.println("handspan: a mistake in this program: " + exception);
            StackTraceElement[] trace = exception.getStackTrace();
            if (trace.length > 0) {
                err.println("  at " + trace[0] + ": please report it with what you did");
            }
            return Exit.INTERNAL;
        });
        return line.execute(args.toArray(new String[0]));
    }

    @Override
    public void run() {
        spec.commandLine().usage(out);
    }

    /** Whether somebody looks on and types at a terminal that can move its cursor. */
    boolean isOnTerminal() {
        return out == System.out && TerminalTable.isThere(System.getenv("TERM"));
    }

    InputStream in() {
        return in;
    }

    PrintStream out() {
        return out;
    }

    PrintStream err() {
        return err;
    }

    /** The version and the build. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {BuildFacts.ofThisBuild().words()};
        }
    }
}
