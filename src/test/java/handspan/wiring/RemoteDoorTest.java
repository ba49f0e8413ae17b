package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.illposed.osc.BufferBytesReceiver;
import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCPacket;
import com.illposed.osc.OSCSerializeException;
import com.illposed.osc.OSCSerializerAndParserBuilder;
import handspan.FrameList;
import handspan.OscSender;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.PlayDesk;
import handspan.live.session.Replay;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.ReceivedMessage;
import handspan.profile.RoomProfile;
import handspan.wiring.RemoteNews.Fate;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Packets are written by the library JavaOSC; what they ask for is known from it. */
class RemoteDoorTest {
    private static final InetSocketAddress SENDER = new InetSocketAddress(InetAddress.getLoopbackAddress(), 7777);
    private static final RoomProfile ROOM = TestRooms.twoDistances(50);
    private static final Tuning FIRST = ROOM.tunings().get(0);
    private static final Tuning SECOND = FIRST.named("second").shifted(2, 0);
    private static final long READING = 20 * Nanos.PER_MS;

    /** -6 dB: 10^(-6/20) (IEC 60027-3), and the rounding of doubles. */
    private static final double CEILING01 = 0.501187233627273;

    private final List<Command> commands = new ArrayList<>();
    private final List<byte[]> answers = new ArrayList<>();
    private final RemoteBook book = new RemoteBook();
    private final PlayDesk desk = new PlayDesk(List.of(FIRST, SECOND), FIRST, false, commands::add);
    private final RemoteDoor door = new RemoteDoor(
            List.of(new RemoteInstrument("Moth", "attic", desk, () -> "playing")),
            (packet, to) -> answers.add(bytes(packet)),
            book);
    private long now = Nanos.PER_SECOND;

    private static byte[] bytes(OSCPacket packet) {
        ByteBuffer buffer = ByteBuffer.allocate(8_000);
        try {
            new OSCSerializerAndParserBuilder()
                    .buildSerializer(new BufferBytesReceiver(buffer))
                    .write(packet);
        } catch (OSCSerializeException e) {
            throw new AssertionError(e);
        }
        return bytes(buffer.flip());
    }

    private static byte[] bytes(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.remaining()];
        buffer.get(bytes);
        return bytes;
    }

    private static OSCMessage message(String word, Object... arguments) {
        return new OSCMessage("/handspan/Moth/" + word, List.of(arguments));
    }

    private void come(byte[] packet) {
        door.onPacket(ByteBuffer.wrap(packet), SENDER, now);
    }

    private void come(String word, Object... arguments) {
        come(bytes(message(word, arguments)));
    }

    @Test
    void ordersTurnTheKnobsOfTheDesk() {
        come("mute", 1);
        come("tuning", "second");
        come("transpose", 3);
        come("trim", -10f);
        come("light");
        assertEquals(
                List.of(
                        new Command.Mute(true),
                        new Command.Tune(SECOND),
                        new Command.Tune(SECOND.shifted(5, 0)),
                        new Command.Tune(SECOND.shifted(5, -10)),
                        new Command.RetakeLight()),
                commands);
        assertEquals(5, book.count(Fate.OBEYED));
    }

    @Test
    void aBundleIsCarriedOutInItsOrder() {
        come(bytes(new OSCBundle(List.of(message("tuning", 2), new OSCBundle(List.of(message("mute", true)))))));
        assertEquals(List.of(new Command.Tune(SECOND), new Command.Mute(true)), commands);
    }

    @Test
    void repeatsAreObeyedAndChangeNothing() {
        for (int i = 0; i < 5; i++) {
            come("transpose", 3);
            come("mute", true);
        }
        assertEquals(2, commands.size());
        assertEquals(10, book.count(Fate.OBEYED));
    }

    @Test
    void theStateIsAnsweredInOneBundle() {
        come("transpose", -4);
        come("tuning", 2);
        come("trim", 2.5f);
        come("mute", 1);
        come("state");
        assertEquals(1, answers.size());
        List<ReceivedMessage> told =
                new OscPacketReader().read(ByteBuffer.wrap(answers.get(0)), 0).messages();
        String now = "/handspan/Moth/now/";
        assertEquals(
                List.of(
                        new ReceivedMessage(0, now + "state", "s", List.of("playing")),
                        new ReceivedMessage(0, now + "mute", "i", List.of(1)),
                        new ReceivedMessage(0, now + "tuning", "si", List.of("second", 2)),
                        new ReceivedMessage(0, now + "transpose", "i", List.of(-4)),
                        new ReceivedMessage(0, now + "trim", "f", List.of(2.5f)),
                        new ReceivedMessage(0, now + "room", "s", List.of("attic"))),
                told);
        commands.clear();
        come(answers.get(0));
        assertEquals(List.of(), commands, "an answer is never an order");
        assertEquals(1, answers.size());
    }

    @Test
    void whatIsWrongIsCountedByItsFateAndNotObeyed() {
        come("transpose", 49);
        come("tuning", "third");
        come("trim", Float.NaN);
        come("tempo", 120);
        come(new byte[] {47, 0, 0});
        come(bytes(new OSCBundle(List.of(message("transpose", 3), new OSCMessage("/x", List.of("a".repeat(1_100)))))));
        byte[] half = bytes(new OSCBundle(List.of(message("transpose", 3), message("mute", 1))));
        half[half.length - 5] = 1; // behind the type tags: the padding is not zero
        come(half);
        assertEquals(List.of(), commands);
        assertEquals(3, book.count(Fate.REFUSED));
        assertEquals(1, book.count(Fate.UNKNOWN));
        assertEquals(2, book.count(Fate.MALFORMED), "of a packet with a fault nothing is obeyed");
        assertEquals(1, book.count(Fate.TOO_LONG));
        assertEquals(7, book.packets());
    }

    @Test
    void whatTheSessionCannotTakeIsRefused() {
        PlayDesk full = new PlayDesk(List.of(FIRST), FIRST, false, command -> {
            throw new IllegalStateException("session has stopped taking commands");
        });
        RemoteDoor closed = new RemoteDoor(
                List.of(new RemoteInstrument("Moth", "attic", full, () -> "")), (packet, to) -> {}, book);
        closed.onPacket(ByteBuffer.wrap(bytes(message("mute", 1))), SENDER, now);
        assertEquals(1, book.count(Fate.REFUSED));
    }

    @Test
    void aFaderIsFollowedAtTheRateAndEndsWhereItWasLeft() {
        for (int i = 1; i <= 1_000; i++) {
            come("trim", i / 20f);
            now += Nanos.PER_MS;
        }
        // 50 at once and 50 a second for a second, and two that may just be due
        assertTrue(Math.abs(commands.size() - 100) <= 2, commands.size() + " commands");
        door.onTick(now + 50 * Nanos.PER_MS);
        assertEquals(new Command.Tune(FIRST.shifted(0, 50)), commands.get(commands.size() - 1));
        int all = commands.size();
        door.onTick(now + Nanos.PER_SECOND);
        assertEquals(all, commands.size());
        assertEquals(1_000, book.count(Fate.OBEYED) + book.count(Fate.TOO_FAST));
    }

    @Test
    void aFaderThatIsMovedDoesNotKeepTheSoundFromBeingOpened() {
        come("mute", 1);
        for (int i = 1; i <= 1_000; i++) {
            come("trim", i / 20f);
            now += Nanos.PER_MS;
        }
        come("mute", 0);
        assertEquals(new Command.Mute(false), commands.get(commands.size() - 1));
    }

    @Test
    void aFloodDoesNotKeepTheSoundFromBeingClosedNorOpensItTooOften() {
        for (int i = 0; i < 20_000; i++) {
            come("mute", 0);
            come("mute", 1);
            now += Nanos.ofMs(0.05);
        }
        // a second: 40 times opened, each time closed at once
        assertTrue(commands.size() <= 82, commands.size() + " commands");
        assertEquals(new Command.Mute(true), commands.get(commands.size() - 1));
        assertTrue(book.take().size() <= 20, "what is told can be read");
    }

    /** Two instruments with the same hand, one of them with a flood at its door of which nothing may be obeyed. */
    @Test
    void brokenAndUnknownPacketsLeaveWhatIsPlayedAsItIs() {
        Random random = new Random(11);
        byte[] unknown = bytes(message("mu", 1));
        Instrument quiet = new Instrument();
        Instrument flooded = new Instrument();
        for (int reading = 0; reading < 500; reading++) {
            quiet.read(reading);
            flooded.read(reading);
            for (int i = 0; i < 40; i++) {
                byte[] packet = unknown.clone();
                packet[random.nextInt(packet.length)] ^= (byte) (1 << random.nextInt(8));
                flooded.come(packet);
            }
        }
        assertEquals(20_000, flooded.seen.packets());
        assertEquals(0, flooded.seen.count(Fate.OBEYED));
        assertEquals(quiet.frames.frames(), flooded.frames.frames());
        assertTrue(quiet.frames.frames().size() > 1_000);
        assertTrue(quiet.frames.last().gain01() > 0.1, "it sounds");
    }

    /** Whatever is obeyed was asked for, as another reader of packets has it; and level keeps its ceiling. */
    @Test
    void aHundredThousandPacketsByChance() {
        Random random = new Random(12);
        Instrument instrument = new Instrument();
        OscPacketReader other = new OscPacketReader();
        List<byte[]> orders = orders(random);
        long asked = 0;
        for (int i = 0; i < 100_000; i++) {
            byte[] packet = chance(orders, random);
            long before = instrument.done();
            instrument.come(packet);
            long done = instrument.done() - before;
            if (done > 0) {
                List<ReceivedMessage> messages =
                        other.read(ByteBuffer.wrap(packet), 0).messages();
                boolean pattern = new String(packet, StandardCharsets.ISO_8859_1).matches("(?s).*[?*\\[{].*");
                assertTrue(pattern || messages.stream().anyMatch(RemoteDoorTest::isOrder), Arrays.toString(packet));
                asked++;
            }
            if (i % 16 == 0) {
                instrument.read(i / 16);
            }
        }
        assertTrue(asked > 2_000, asked + " obeyed");
        assertTrue(instrument.seen.count(Fate.MALFORMED) > 20_000, "malformed");
        assertTrue(instrument.seen.count(Fate.REFUSED) > 1_000, "refused");
        assertTrue(instrument.frames.frames().stream().allMatch(frame -> frame.gain01() <= CEILING01 + 1e-9));
        assertTrue(instrument.frames.frames().stream().anyMatch(frame -> frame.gain01() > CEILING01 / 2), "it sounded");
    }

    private static boolean isOrder(ReceivedMessage message) {
        return message.address().matches("/handspan/Moth/(mute|tuning|transpose|trim|light|state)")
                && message.arguments().size() <= 1;
    }

    /** Orders, some of them out of range. */
    private static List<byte[]> orders(Random random) {
        List<byte[]> orders = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            // seldom closed, so that it sounds now and then
            orders.add(bytes(message("mute", i == 0 ? 1 : 2 * random.nextInt(2))));
            orders.add(bytes(message("tuning", random.nextInt(4))));
            orders.add(bytes(message("tuning", random.nextBoolean() ? "first" : "second")));
            orders.add(bytes(message("transpose", random.nextInt(120) - 60)));
            orders.add(bytes(message("trim", Float.intBitsToFloat(random.nextInt()))));
            orders.add(bytes(message("trim", random.nextFloat() * 300 - 150)));
            orders.add(bytes(message("light")));
            orders.add(bytes(message("state")));
            orders.add(bytes(new OSCBundle(List.of(message("mute", 0), message("transpose", 1f)))));
        }
        return orders;
    }

    /** One order in two as it is, the others with some bytes changed; and bytes that are nothing. */
    private static byte[] chance(List<byte[]> orders, Random random) {
        if (random.nextInt(10) == 0) {
            byte[] nothing = new byte[random.nextInt(80)];
            random.nextBytes(nothing);
            return nothing;
        }
        byte[] packet = orders.get(random.nextInt(orders.size())).clone();
        for (int wrong = Math.max(0, random.nextInt(8) - 4); wrong > 0; wrong--) {
            packet[random.nextInt(packet.length)] = (byte) random.nextInt();
        }
        return packet;
    }

    /** One that plays, in a plain loop, with a door. */
    private static final class Instrument {
        private final FrameList frames = new FrameList();
        private final RemoteBook seen = new RemoteBook();
        private long now = Nanos.PER_SECOND;
        private final Engine engine =
                new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, event -> {}), now);
        private final RemoteDoor door;

        Instrument() {
            engine.onLinkUp(now);
            engine.onCommand(new Command.Play(ROOM, FIRST, PathSettings.USUAL.muted(false)), now);
            PlayDesk desk =
                    new PlayDesk(List.of(FIRST, SECOND), FIRST, false, command -> engine.onCommand(command, now));
            door = new RemoteDoor(
                    List.of(new RemoteInstrument("Moth", "attic", desk, () -> "playing")), (packet, to) -> {}, seen);
        }

        void come(byte[] packet) {
            door.onPacket(ByteBuffer.wrap(packet), SENDER, now);
        }

        void read(int number) {
            now += READING;
            Replay.tickUntil(engine, now);
            door.onTick(now);
            byte[] line = (200 + number % 100 + ",280\n").getBytes(StandardCharsets.US_ASCII);
            engine.onBytes(line, line.length, now);
        }

        long done() {
            return seen.count(Fate.OBEYED) + seen.count(Fate.ANSWERED);
        }
    }

    // ---- several instruments ----

    private final PlayDesk other = new PlayDesk(List.of(FIRST, SECOND), FIRST, false, command -> {});
    private final RemoteDoor both = new RemoteDoor(
            List.of(
                    new RemoteInstrument("Moth", "attic", desk, () -> "playing"),
                    new RemoteInstrument("Wren", "yard", other, () -> "away")),
            (packet, to) -> answers.add(bytes(packet)),
            book);

    private void comeToBoth(byte[] packet) {
        both.onPacket(ByteBuffer.wrap(packet), SENDER, now);
    }

    @Test
    void aPatternMeansEveryInstrumentAndANameOne() {
        comeToBoth(OscSender.pattern("/handspan/*/mute", 1));
        assertTrue(desk.setting().muted());
        assertTrue(other.setting().muted());
        comeToBoth(bytes(new OSCMessage("/handspan/Wren/mute", List.of(0))));
        assertTrue(desk.setting().muted());
        assertFalse(other.setting().muted());
        assertEquals(
                List.of("Moth: mute", "Wren: mute", "Wren: open"),
                book.take().stream().map(RemoteNews::what).toList());
    }

    @Test
    void amongSeveralAnAddressOfNobodyIsUnknownOnceAndAWrongArgumentIsRefusedOnce() {
        comeToBoth(bytes(new OSCMessage("/handspan/Rook/mute", List.of(1))));
        comeToBoth(OscSender.pattern("/handspan/*/mute", 7));

        assertEquals(1, book.count(Fate.UNKNOWN));
        assertEquals(1, book.count(Fate.REFUSED));
        assertFalse(desk.setting().muted());
    }

    @Test
    void eachOfSeveralAnswersForItself() {
        comeToBoth(OscSender.pattern("/handspan/*/state"));

        List<String> told = answers.stream()
                .flatMap(answer -> new OscPacketReader().read(ByteBuffer.wrap(answer), 0).messages().stream())
                .filter(message -> message.address().endsWith("/now/state"))
                .map(message -> message.address() + " " + message.arguments().get(0))
                .toList();
        assertEquals(List.of("/handspan/Moth/now/state playing", "/handspan/Wren/now/state away"), told);
    }
}
