package handspan.outside.osc;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.send.Packing;
import handspan.music.send.PlayState;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import handspan.music.send.Sparing;
import handspan.number.units.Nanos;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.ReceivedMessage;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a receiver has in its hands after a while, whatever a plan spares it and the network loses. */
class SentLinesTest {
    private static final long FRAME_NANOS = 5 * Nanos.PER_MS;

    /** Quick repeats of silence at each end of sound. */
    private static final int REPEATS = 5;

    /** Keeps the latest arguments at each address, as a sound patch does. */
    private static final class Patch {
        private final OscPacketReader reader = new OscPacketReader();
        private final Map<String, Object> latest = new HashMap<>();
        private final List<String> log = new ArrayList<>();

        void receive(ByteBuffer packet) {
            for (ReceivedMessage message : reader.read(packet, 0).messages()) {
                Object first = String.valueOf(
                        message.arguments().isEmpty()
                                ? message.typeTags()
                                : message.arguments().get(0));
                latest.put(message.address(), first);
                log.add(message.address() + " " + message.arguments());
            }
        }
    }

    private static OscEncoder encoder(Packing packing, SendLine... lines) {
        return new OscEncoder(new SendPlan(List.of(lines), List.of()).with(packing), nanos -> Instant.EPOCH);
    }

    private static SoundFrame frame(int number, int key, double gain01, boolean hand) {
        return new SoundFrame(
                number * FRAME_NANOS, 440, key, 0, 1, 4, gain01, hand, 0, 0, hand ? PlayState.PLAYING : PlayState.AWAY);
    }

    private static int send(OscEncoder encoder, SoundFrame frame, Patch patch, int packets, IntPredicate lost) {
        int sent = packets;
        encoder.begin(frame, false);
        for (ByteBuffer packet = encoder.next(); packet != null; packet = encoder.next()) {
            if (!lost.test(sent++)) {
                patch.receive(packet);
            }
        }
        return sent;
    }

    @Test
    void anAddressThatIsLeftBehindIsToldOfSilence() {
        OscEncoder encoder = encoder(Packing.USUAL, new SendLine(SendValue.LEVEL, "/key/{key}", true));
        Patch patch = new Patch();
        send(encoder, frame(0, 60, 0.5, true), patch, 0, n -> false);
        send(encoder, frame(1, 62, 0.5, true), patch, 0, n -> false);
        assertEquals(List.of("/key/60 [0.5]", "/key/62 [0.5]", "/key/60 [0.0]"), patch.log);
        for (int i = 2; i < 20; i++) {
            send(encoder, frame(i, 62, 0.5, true), patch, 0, n -> false);
        }
        assertEquals(REPEATS, patch.log.stream().filter("/key/60 [0.0]"::equals).count());
        send(encoder, frame(20, 62, 0, false), patch, 0, n -> false);
        assertEquals(Map.of("/key/60", "0.0", "/key/62", "0.0"), patch.latest);
    }

    @Test
    void aKeyThatSoundsAgainIsNotSilenced() {
        OscEncoder encoder = encoder(Packing.USUAL, new SendLine(SendValue.LEVEL, "/key/{key}", true));
        Patch patch = new Patch();
        int[] keys = {60, 62, 60, 60, 60, 60, 60, 60, 60};
        for (int i = 0; i < keys.length; i++) {
            send(encoder, frame(i, keys[i], 0.5, true), patch, 0, n -> false);
        }
        assertEquals(Map.of("/key/60", "0.5", "/key/62", "0.0"), patch.latest);
    }

    /** Whatever the plan and whatever a third of the packets are, five repeats of silence leave nothing sounding. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void everyAddressThatEverSoundedEndsSilent(boolean bundled) {
        for (int seed = 0; seed < 2000; seed++) {
            Random random = new Random(seed);
            List<SendLine> lines = new ArrayList<>();
            int count = 1 + random.nextInt(9);
            for (int i = 0; i < count; i++) {
                lines.add(anyLine(random, i));
            }
            OscEncoder encoder = encoder(Packing.USUAL.bundled(bundled), lines.toArray(new SendLine[0]));
            int phase = random.nextInt(3);
            IntPredicate lost = n -> n % 3 == phase;
            Patch patch = new Patch();
            int packets = 0;
            int number = 0;
            int key = 60;
            for (; number < 60; number++) {
                key = random.nextInt(4) == 0 ? 58 + random.nextInt(5) : key;
                packets = send(encoder, frame(number, key, random.nextDouble(), true), patch, packets, lost);
            }
            for (int repeat = 0; repeat < REPEATS; repeat++) {
                packets = send(encoder, frame(number + 5 * repeat, key, 0, false), patch, packets, lost);
            }
            assertSilent(lines, patch.latest, "seed " + seed + " " + lines);
        }
    }

    private static SendLine anyLine(Random random, int number) {
        SendValue value = List.of(SendValue.LEVEL, SendValue.HAND, SendValue.DB, SendValue.PITCH, SendValue.CENTS)
                .get(random.nextInt(5));
        String address = "/" + number + "/" + value.word() + (random.nextBoolean() ? "/{key}" : "");
        return new SendLine(value, address, true)
                .typed("ifhd".substring(0, 1 + random.nextInt(4)).substring(0, 1))
                .with(random.nextBoolean() ? Scaling.NONE : new Scaling(0, 1, 0, 127, true))
                .with(new Sparing(random.nextBoolean(), random.nextBoolean() ? 0 : 10, random.nextInt(3)));
    }

    private static void assertSilent(List<SendLine> lines, Map<String, Object> latest, String words) {
        for (SendLine line : lines) {
            String start = line.address().replace("{key}", "");
            double silent = line.value() == SendValue.DB ? line.scaling().of(SendValue.SILENCE_DB) : 0;
            latest.forEach((address, argument) -> {
                if (line.value().sounds() && address.startsWith(start)) {
                    assertEquals(silent, Double.parseDouble(argument.toString()), 0, () -> address + " " + words);
                }
            });
        }
    }

    @Test
    void aLevelThatFallsToNothingIsNeverSpared() {
        SendLine line = SendLine.byDefault(SendValue.LEVEL, "Moth").with(new Sparing(true, 1, 0.5));
        OscEncoder encoder = encoder(Packing.USUAL, line);
        Patch patch = new Patch();
        send(encoder, frame(0, 60, 0.4, true), patch, 0, n -> false);
        send(encoder, frame(1, 60, 0.3, true), patch, 0, n -> false);
        send(encoder, frame(2, 60, 0, true), patch, 0, n -> false);
        assertEquals(List.of("/Moth/level [0.4]", "/Moth/level [0.0]"), patch.log);
    }

    @Test
    void aLineOnChangeGoesOutOnceASecondWithTheState() {
        SendLine line = SendLine.byDefault(SendValue.LEVEL, "Moth").with(new Sparing(true, 0, 0));
        OscEncoder encoder = encoder(Packing.USUAL, line);
        encoder.begin(frame(0, 60, 0.4, true), false);
        assertTrue(encoder.next() != null);
        encoder.begin(frame(1, 60, 0.4, true), false);
        assertTrue(encoder.next() == null);
        encoder.begin(frame(2, 60, 0.4, true), true);
        assertTrue(encoder.next() != null);
    }

    @Test
    void separateMessagesAreNoBundles() {
        OscEncoder encoder = encoder(
                Packing.USUAL.bundled(false),
                SendLine.byDefault(SendValue.PITCH, "Moth"),
                SendLine.byDefault(SendValue.LEVEL, "Moth"));
        Patch patch = new Patch();
        assertEquals(2, send(encoder, frame(0, 60, 0.5, true), patch, 0, n -> false));
        assertEquals(List.of("/Moth/pitch [440.0]", "/Moth/level [0.5]"), patch.log);
        encoder.begin(frame(1, 60, 0.5, true), false);
        ByteBuffer packet = encoder.next();
        assertTrue(packet != null && packet.get(0) == '/');
    }

    /** RFC 5905 (2010), Figure 4: 1970 begins 2,208,988,800 s after 1900; a half is 80000000 (hex) of 2^-32 s. */
    @Test
    void aBundleSaysWhenToActByTheEpochOfTheNetworkTimeProtocol() {
        SendPlan plan = new SendPlan(List.of(SendLine.byDefault(SendValue.PITCH, "Moth")), List.of())
                .with(Packing.USUAL.after(500));
        long started = 7 * Nanos.PER_SECOND;
        OscEncoder encoder = new OscEncoder(plan, nanos -> Instant.EPOCH.plusNanos(nanos - started));
        encoder.begin(new SoundFrame(started, 440, 69, 0, 1, 4, 0, true, 0, 0, PlayState.PLAYING), false);
        ByteBuffer packet = encoder.next();
        assertEquals(0x83aa_7e80_8000_0000L, requireNonNull(packet).getLong(8));
    }
}
