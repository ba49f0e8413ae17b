package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import handspan.Pty;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.outside.osc.OscReceiver;
import handspan.outside.osc.packet.ReceivedMessage;
import handspan.outside.simulate.Cue;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.SimulatedInstruments;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a serial port to datagrams, by the command line: a simulated board prints into a real pseudo-terminal, the
 * program opens it as any port, leads its player through a calibration and plays; what arrives over UDP is held against
 * the hand.
 */
@Timeout(90)
@DisabledOnOs(OS.WINDOWS)
class EndToEndTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** An ideal sensor printing tenths of a mm at 6 cents a mm; holds of 1 s settle to well under half a mm. */
    private static final double TOLERANCE_CENTS = 3;

    private static final OutputStream NOWHERE = OutputStream.nullOutputStream();

    @TempDir
    Path folder;

    /** Prints a board's lines into a terminal by the clock until closed. */
    private static final class Pump implements AutoCloseable {
        private final Thread thread;
        private volatile boolean closed;

        Pump(SimulatedInstrument instrument, Pty terminal) {
            thread = new Thread(() -> {
                try {
                    while (!closed) {
                        long waitNanos = instrument.board().nextLineNanos() - System.nanoTime();
                        if (waitNanos > 0) {
                            Thread.sleep(waitNanos / Nanos.PER_MS, (int) (waitNanos % Nanos.PER_MS));
                        }
                        terminal.write(instrument.board().nextLine());
                    }
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            });
            thread.start();
        }

        @Override
        public void close() {
            closed = true;
            thread.interrupt();
        }
    }

    /** Standard output that hands each JSON line on as it is printed. */
    private static PrintStream lines(Consumer<JsonNode> listener) {
        return new PrintStream(NOWHERE, true, StandardCharsets.UTF_8) {
            @Override
            public void println(String line) {
                try {
                    listener.accept(MAPPER.readTree(line));
                } catch (IOException e) {
                    throw new IllegalStateException(line, e);
                }
            }
        };
    }

    private static int run(Consumer<JsonNode> listener, String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--json");
        return Handspan.run(all, new ByteArrayInputStream(new byte[0]), lines(listener), System.err);
    }

    @Test
    void aGuidedCalibrationAndAPassageThroughARealPort() throws Exception {
        SimulatedInstrument instrument = SimulatedInstruments.create("still", 5, System.nanoTime());
        try (Pty terminal = new Pty();
                Pump pump = new Pump(instrument, terminal)) {
            List<String> captured = new ArrayList<>();
            int calibrated = run(
                    event -> {
                        if (event.get("event").asText().equals("step")) {
                            instrument.player().react(cue(event), System.nanoTime());
                        } else if (event.get("event").asText().equals("captured")) {
                            captured.add(event.get("step").asText());
                        }
                    },
                    "calibrate",
                    terminal.port(),
                    "--room",
                    "attic",
                    "--profiles",
                    folder.toString(),
                    "--pitch",
                    "1:distance:mm",
                    "--level",
                    "2:distance:mm",
                    "--hold",
                    "1");
            assertEquals(0, calibrated);
            assertEquals(List.of("rest", "near", "far", "near", "far"), captured);

            List<ReceivedMessage> received = Collections.synchronizedList(new ArrayList<>());
            instrument.player().react(Cue.at(Cue.Kind.PLACE, PlayerHand.PITCH, 400), System.nanoTime());
            instrument.player().react(Cue.of(Cue.Kind.FAR, PlayerHand.LEVEL), System.nanoTime());
            try (OscReceiver receiver = OscReceiver.open(0, System::nanoTime, received::add)) {
                int played = run(
                        event -> {},
                        "play",
                        terminal.port(),
                        "--room",
                        "attic",
                        "--profiles",
                        folder.toString(),
                        "--send",
                        "udp:127.0.0.1:" + receiver.port(),
                        "--seconds",
                        "4");
                assertEquals(0, played);
            }
            // near 100 mm is A3 = 220 Hz, far 500 mm is A5 = 880 Hz: 400 mm is three quarters of 24 semitones above A3
            double meantHz = 220 * Math.pow(2, 18.0 / 12);
            double sentHz = lastFloat(received, "/instrument/pitch");
            double offCents = Math.abs(Cents.between(meantHz, sentHz));
            assertTrue(offCents < TOLERANCE_CENTS, offCents + " cents off");
            assertTrue(largestFloat(received, "/instrument/level") > 0.49, "the level hand is at the loud end");
            assertTrue(largestFloat(received, "/instrument/level") <= 0.50119, "never above the ceiling of -6 dB");
            assertEquals(0, lastFloat(received, "/instrument/level"), 0, "silent at the end");
            assertEquals(0, last(received, "/instrument/hand").arguments().get(0), "no hand at the end");
        }
    }

    private static Cue cue(JsonNode event) {
        PlayerHand hand = event.get("hand").asText().equals("level") ? PlayerHand.LEVEL : PlayerHand.PITCH;
        return Cue.of(Cue.Kind.valueOf(event.get("step").asText().toUpperCase(Locale.ROOT)), hand);
    }

    private static ReceivedMessage last(List<ReceivedMessage> received, String address) {
        return received.stream()
                .filter(message -> message.address().equals(address))
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    private static float lastFloat(List<ReceivedMessage> received, String address) {
        return (Float) last(received, address).arguments().get(0);
    }

    private static double largestFloat(List<ReceivedMessage> received, String address) {
        return received.stream()
                .filter(message -> message.address().equals(address))
                .mapToDouble(message -> (Float) message.arguments().get(0))
                .max()
                .orElseThrow();
    }

    /** The cable is pulled in the middle of a note and plugged in again; the port comes back under the same name. */
    @Test
    void aCablePulledWhilePlayingMeansSilenceAndThenSoundAgain() throws Exception {
        assertEquals(
                0,
                Cli.run("calibrate", "sim:still", "--room", "attic", "--profiles", folder.toString(), "--fast")
                        .exitCode());
        Path port = folder.resolve("port");
        List<ReceivedMessage> received = Collections.synchronizedList(new ArrayList<>());
        try (OscReceiver receiver = OscReceiver.open(0, System::nanoTime, received::add)) {
            Pty first = new Pty();
            Files.createSymbolicLink(port, Path.of(first.port()));
            SimulatedInstrument instrument = heldInstrument();
            Thread player = new Thread(() -> run(
                    event -> {},
                    "play",
                    port.toString(),
                    "--room",
                    "attic",
                    "--profiles",
                    folder.toString(),
                    "--send",
                    "udp:127.0.0.1:" + receiver.port(),
                    "--seconds",
                    "7"));
            player.start();
            try (Pump pump = new Pump(instrument, first)) {
                await(received, "playing");
            }
            first.close();
            Files.delete(port);
            await(received, "lost");
            ReceivedMessage silence = awaitSilence(received);
            assertEquals(0, silence.arguments().get(0));
            int before = received.size();
            try (Pty second = new Pty()) {
                Files.createSymbolicLink(port, Path.of(second.port()));
                try (Pump pump = new Pump(heldInstrument(), second)) {
                    await(received, before, "playing");
                    awaitSound(received, before);
                }
            }
            player.join();
        }
    }

    private static SimulatedInstrument heldInstrument() {
        long now = System.nanoTime();
        SimulatedInstrument instrument = SimulatedInstruments.create("still", 5, now);
        instrument.player().react(Cue.at(Cue.Kind.PLACE, PlayerHand.PITCH, 300), now);
        instrument.player().react(Cue.of(Cue.Kind.FAR, PlayerHand.LEVEL), now);
        return instrument;
    }

    private static void await(List<ReceivedMessage> received, String state) throws InterruptedException {
        await(received, 0, state);
    }

    private static void await(List<ReceivedMessage> received, int from, String state) throws InterruptedException {
        for (int waited = 0; waited < 1500; waited++) {
            List<ReceivedMessage> copy = List.copyOf(received);
            if (copy.subList(Math.min(from, copy.size()), copy.size()).stream()
                    .anyMatch(message -> message.address().endsWith("/state")
                            && state.equals(message.arguments().get(0)))) {
                return;
            }
            Thread.sleep(10);
        }
        throw new AssertionError("state '" + state + "' did not arrive within 15 s");
    }

    private static void awaitSound(List<ReceivedMessage> received, int from) throws InterruptedException {
        for (int waited = 0; waited < 300; waited++) {
            List<ReceivedMessage> copy = List.copyOf(received);
            List<ReceivedMessage> since = copy.subList(from, copy.size());
            if (since.stream().anyMatch(message -> message.address().equals("/Plumbline/level"))
                    && largestFloat(since, "/Plumbline/level") > 0.1) {
                assertEquals(1, last(since, "/Plumbline/hand").arguments().get(0));
                return;
            }
            Thread.sleep(10);
        }
        throw new AssertionError("no sound came back within 3 s");
    }

    /** The first level message after the loss that is silence; its hand message must be 0 too. */
    private static ReceivedMessage awaitSilence(List<ReceivedMessage> received) throws InterruptedException {
        for (int waited = 0; waited < 300; waited++) {
            List<ReceivedMessage> copy = List.copyOf(received);
            ReceivedMessage level = last(copy, "/Plumbline/level");
            if (((Float) level.arguments().get(0)) == 0f) {
                return last(copy, "/Plumbline/hand");
            }
            Thread.sleep(10);
        }
        throw new AssertionError("level 0 did not arrive within 3 s");
    }
}
