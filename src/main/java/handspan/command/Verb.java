package handspan.command;

import handspan.live.session.LinkException;
import handspan.profile.ProfileException;
import handspan.wiring.SessionLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all verbs share: where they speak, and which exit code goes with what went wrong. */
@Command(mixinStandardHelpOptions = true)
abstract class Verb implements Callable<Integer> {
    @Spec
    CommandSpec spec;

    @Option(names = "--json", description = "print JSON alone on standard output, words on standard error")
    boolean json;

    /**
     * Does the work.
     *
     * @return the exit code
     */
    abstract int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException;

    @Override
    public Integer call() {
        Handspan parent = parent();
        SessionLog log = SessionLog.of(spec.name());
        int exitCode = run(new Talk(parent.out(), parent.err(), json, log), log);
        log.end(exitCode);
        if (!log.trouble().isEmpty()) {
            parent.err().println(log.trouble());
        }
        return exitCode;
    }

    private int run(Talk talk, SessionLog log) {
        try {
            return run(talk);
        } catch (UsageException e) {
            return failed(talk, Exit.USAGE, e);
        } catch (LinkException e) {
            log.note("failed: " + e.getMessage());
            return failed(talk, Exit.INSTRUMENT, e);
        } catch (ProfileException e) {
            return failed(talk, Exit.FILE, e);
        } catch (UncheckedIOException | IOException e) {
            return failed(talk, Exit.FILE, e);
        }
    }

    Handspan parent() {
        return (Handspan) spec.root().userObject();
    }

    private static int failed(Talk talk, int exitCode, Exception e) {
        String words = e.getMessage() == null ? e.toString() : e.getMessage();
        talk.warn("handspan: " + words);
        talk.event("result", Map.of("exitCode", exitCode, "error", words));
        return exitCode;
    }
}
