package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.PortIdentity;
import handspan.live.session.Command;
import handspan.live.session.LinkFacts;
import handspan.live.session.Snapshot;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionLogTest {
    @TempDir
    Path folder;

    /**
     * Places by custom: XDG Base Directory Specification 0.8 (a relative path is passed over); the others by common
     * practice.
     */
    @Test
    void theLogLiesWhereEachSystemKeepsSuchFiles() {
        Path own = Path.of("/home/me", ".local", "state", "handspan");
        assertEquals(own, SessionLog.userFolder(Map.of(), "Linux", "/home/me"));
        assertEquals(own, SessionLog.userFolder(Map.of("XDG_STATE_HOME", "here"), "Linux", "/home/me"));
        assertEquals(
                Path.of("/var/s/handspan"),
                SessionLog.userFolder(Map.of("XDG_STATE_HOME", "/var/s"), "Linux", "/home/me"));
        assertEquals(
                Path.of("/home/me", "Library", "Logs", "handspan"),
                SessionLog.userFolder(Map.of(), "Mac OS X", "/home/me"));
        assertEquals(
                Path.of("local", "handspan"),
                SessionLog.userFolder(Map.of("LOCALAPPDATA", "local"), "Windows 11", "/home/me"));
    }

    /** The simulated instruments start like real ones: their first five readings are thrown away. */
    @Test
    void whatHappensToAnInstrumentIsWrittenDown() throws Exception {
        SessionLog log = new SessionLog(folder.resolve("state"), "watch");
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.empty(), 1, false);
        try (Rig rig = log.following(Rigs.open(Source.parse("sim:hall"), options, null, List.of(), null), "sim:hall")) {
            rig.submit(new Command.Watch());
            rig.follow(snapshot -> snapshot.readings() < 200);
        }
        log.end(0);
        List<String> lines = Files.readAllLines(log.file());
        String pid = String.valueOf(ProcessHandle.current().pid());
        assertTrue(
                lines.stream()
                        .allMatch(line ->
                                line.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]{8,12}Z " + pid + " watch: .*")),
                lines.toString());
        String all = String.join("\n", lines);
        for (String words : List.of(
                "watch: opened sim:hall",
                "sim:hall: link up",
                "sim:hall: learned 2 numbers",
                "rejected: 5 first readings",
                "sim:hall: closed after 2",
                "ended with exit code 0")) {
            assertTrue(all.contains(words), words + " is not in " + all);
        }
        assertEquals("", log.trouble());
    }

    @Test
    void aFolderThatCannotBeWrittenCostsAWordAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("state"), "in the way");
        SessionLog log = new SessionLog(file, "play");
        log.note("one");
        log.note("two");
        log.end(0);
        assertTrue(log.trouble().startsWith("no log is kept: " + log.file()), log.trouble());
    }

    @Test
    void aRunThatTouchedNoInstrumentLeavesNoLine() {
        SessionLog log = new SessionLog(folder.resolve("state"), "scales");
        log.end(0);
        assertFalse(Files.exists(log.file()));
    }

    /** What a rig knows, the one that is written down knows too: every question that can be put to it. */
    @Test
    void aRigThatIsWrittenDownAnswersAsItself() throws Exception {
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.empty(), 1, false);
        Snapshot snapshot;
        try (Rig plain = Rigs.open(Source.parse("sim:hall"), options, null, List.of(), null)) {
            snapshot = plain.snapshot();
        }
        PortIdentity board = new PortIdentity(0x1234, 0x5678, "A1", "1-2");
        Map<String, Object> answers = Map.of(
                "snapshot",
                snapshot,
                "follow",
                snapshot,
                "simulation",
                Optional.empty(),
                "remark",
                "cut short",
                "recordedBaud",
                19_200,
                "facts",
                new LinkFacts("/dev/ttyTEST", 57_600, board, "found by trying"));
        Rig told = (Rig) Proxy.newProxyInstance(
                Rig.class.getClassLoader(),
                new Class<?>[] {Rig.class},
                (proxy, method, arguments) -> answers.get(method.getName()));
        Rig logged = new SessionLog(folder.resolve("asked"), "watch").following(told, "board");
        for (Method method : Rig.class.getMethods()) {
            if (method.getParameterCount() == 0 && method.getReturnType() != void.class) {
                assertEquals(answers.get(method.getName()), method.invoke(logged), method.getName());
            }
        }
    }
}
