package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.send.ChannelValues;
import handspan.music.send.Packing;
import handspan.music.send.PlayState;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import handspan.music.send.Sparing;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.OscTimeTag;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class OscEncoderTest {
    private static final long SOME_TIME = 0x83aa_7e80_8000_0000L;

    /** The counting itself may cost some bytes; a single object of 16 bytes a frame would show up as 1.6 MB. */
    private static final long ALLOCATION_SLACK_BYTES = 50_000;

    private static final int MEASURED_FRAMES = 100_000;

    private static byte[] encode(List<SendLine> lines, SoundFrame frame, long timeTag, boolean withState) {
        SendPlan plan = new SendPlan(lines, List.of());
        // the only other time of these tests is the first half second of 1970
        OscEncoder encoder = timeTag == OscTimeTag.IMMEDIATELY
                ? new OscEncoder(lines)
                : new OscEncoder(plan.with(Packing.USUAL.after(0)), nanos -> Instant.ofEpochMilli(500));
        return Oracle.bytes(Frames.packet(encoder, frame, withState));
    }

    private static SoundFrame level(double gain01) {
        return new SoundFrame(0, 440, 69, 0, 1, 4, gain01, true, 0, 0, PlayState.PLAYING);
    }

    /** Examples Supporting the OpenSound Control 1.0 Spec (M. Wright, 2002), "OSC Message Examples", the first one. */
    @Test
    void aMessageIsTheOneOfTheSpecification() {
        List<SendLine> lines = List.of(new SendLine(SendValue.PITCH, "/oscillator/4/frequency", true));
        byte[] bundle = encode(lines, Frames.at(0), OscTimeTag.IMMEDIATELY, false);
        byte[] message = Oracle.hex("2f6f7363 696c6c61 746f722f 342f6672 65717565 6e637900 2c660000 43dc0000");
        assertArrayEquals(Oracle.hex("2362756e646c6500 0000000000000001 00000020"), Arrays.copyOf(bundle, 20));
        assertArrayEquals(message, Arrays.copyOfRange(bundle, 20, bundle.length));
    }

    /** Unit-test datagrams of the python-osc library (public domain). */
    @Test
    void aBundleOfOneIsThatOfAnotherLibrary() {
        List<SendLine> lines = List.of(new SendLine(SendValue.LEVEL, "/LFO_Rate", true));
        assertArrayEquals(
                Oracle.hex("2362756e646c6500 0000000000000001 00000014 2f4c464f 5f526174 65000000 2c660000 3e8ccccd"),
                encode(lines, level(0.275), OscTimeTag.IMMEDIATELY, false));
    }

    static Stream<SoundFrame> frames() {
        Random random = new Random(20);
        return Stream.concat(
                Stream.of(Frames.PLAYING, Frames.NOTHING_YET),
                IntStream.range(0, 20)
                        .mapToObj(i -> new SoundFrame(
                                random.nextLong(),
                                20 + 5_000 * random.nextDouble(),
                                random.nextInt(128),
                                100 * random.nextDouble() - 50,
                                random.nextInt(12),
                                random.nextInt(12) - 2,
                                random.nextDouble(),
                                random.nextBoolean(),
                                random.nextDouble(),
                                random.nextDouble(),
                                Frames.anyState(random))));
    }

    @ParameterizedTest
    @MethodSource("frames")
    void everyFrameHasTheBytesOfTheOtherEncoder(SoundFrame frame) {
        for (boolean withState : new boolean[] {true, false}) {
            assertArrayEquals(
                    Oracle.bundle(Frames.ALL_LINES, frame, SOME_TIME, withState),
                    encode(Frames.ALL_LINES, frame, SOME_TIME, withState));
        }
    }

    /** Words of 4, 5 and 7 characters: each another padding. */
    @ParameterizedTest
    @EnumSource(PlayState.class)
    void stateWordsOfAnyLengthHaveTheBytesOfTheOtherEncoder(PlayState state) {
        List<SendLine> lines = List.of(new SendLine(SendValue.STATE, "/s", true));
        assertArrayEquals(Oracle.bundle(lines, Frames.in(state), 1, true), encode(lines, Frames.in(state), 1, true));
    }

    @Test
    void anyChoiceAndOrderOfLinesHasTheBytesOfTheOtherEncoder() {
        Random random = new Random(21);
        for (int i = 0; i < 200; i++) {
            List<SendLine> lines = new ArrayList<>();
            for (SendValue value : SendValue.usual()) {
                String name = "/" + "abcdefgh".substring(0, 1 + random.nextInt(8)) + "/" + value.word();
                lines.add(new SendLine(value, name, random.nextInt(3) > 0));
            }
            Collections.shuffle(lines, random);
            List<SendLine> some = lines.subList(0, 1 + random.nextInt(lines.size()));
            some.set(0, some.get(0).turned(true));
            assertArrayEquals(Oracle.bundle(some, Frames.PLAYING, 1, true), encode(some, Frames.PLAYING, 1, true));
        }
    }

    private static SendLine anyLine(Random random) {
        SendValue value = List.of(SendValue.values()).get(random.nextInt(SendValue.values().length));
        String channel = value.isOfChannel() ? "1" : "";
        StringBuilder types = new StringBuilder();
        for (int i = 0; i < value.types().length(); i++) {
            types.append("ifshdT".charAt(random.nextInt(6)));
        }
        boolean scales = value != SendValue.NOTE && value != SendValue.DEGREE && value != SendValue.STATE;
        Scaling scaling = !scales || random.nextBoolean()
                ? Scaling.NONE
                : new Scaling(
                        random.nextInt(3), 3 + random.nextInt(500), 10, random.nextInt(128), random.nextBoolean());
        String address =
                "/" + "abcdefgh".substring(0, 1 + random.nextInt(8)) + (random.nextBoolean() ? "/{key}" : "/4/x");
        return new SendLine(value, channel, address, types.toString(), scaling, Sparing.NONE, true);
    }

    /** JavaOSC writes what was worked out by hand, see {@link Oracle}. */
    @Test
    void linesOfAnyTypeScaleAndAddressHaveTheBytesOfTheOtherEncoder() {
        Random random = new Random(22);
        List<SoundFrame> all = frames().toList();
        for (int i = 0; i < 2000; i++) {
            List<SendLine> lines = IntStream.range(0, 1 + random.nextInt(5))
                    .mapToObj(n -> anyLine(random))
                    .toList();
            SoundFrame frame = all.get(random.nextInt(all.size()))
                    .with(new ChannelValues(new double[] {random.nextInt(1024)}, new double[] {random.nextDouble()}));
            assertArrayEquals(Oracle.bundle(lines, frame, 1, true), encode(lines, frame, 1, true), lines::toString);
        }
    }

    @Test
    void aBundleReadsBackAsWhatWasSent() {
        ByteBuffer bundle = Frames.packet(new OscEncoder(Frames.ALL_LINES), Frames.PLAYING, true);
        List<String> read = new OscPacketReader()
                .read(bundle, 0).messages().stream()
                        .map(message -> message.address() + " " + message.typeTags() + " " + message.arguments())
                        .toList();
        assertEquals(
                List.of(
                        "/Moth/pitch f [438.25]",
                        "/Moth/note if [69, -6.8991]",
                        "/Moth/degree ii [5, 4]",
                        "/Moth/level f [0.625]",
                        "/Moth/hand i [1]",
                        "/Moth/place ff [0.25, 0.75]",
                        "/Moth/state s [playing]"),
                read);
    }

    @Test
    void theBufferIsUsedAgainAndStartsAfresh() {
        OscEncoder encoder = new OscEncoder(Frames.ALL_LINES);
        ByteBuffer first = Frames.packet(encoder, Frames.PLAYING, true);
        int longer = first.remaining();
        first.position(first.limit());
        ByteBuffer second = Frames.packet(encoder, Frames.PLAYING, false);
        assertSame(first, second);
        assertEquals(0, second.position());
        assertTrue(second.remaining() < longer);
    }

    @Test
    void withEveryLineOffThereIsNothingToSend() {
        List<SendLine> off = Frames.ALL_LINES.stream()
                .map(line -> new SendLine(line.value(), line.address(), false))
                .toList();
        OscEncoder encoder = new OscEncoder(off);
        encoder.begin(Frames.PLAYING, true);
        assertNull(encoder.next());
        OscEncoder stateOnly = new OscEncoder(List.of(new SendLine(SendValue.STATE, "/s", true)));
        stateOnly.begin(Frames.PLAYING, false);
        assertNull(stateOnly.next());
        stateOnly.begin(Frames.PLAYING, true);
        assertNotNull(stateOnly.next());
        assertNull(stateOnly.next());
    }

    /** 65,535 bytes of IPv4 less 20 and 8 of heads (RFC 791, RFC 768); a line here has 12 + address + 8 bytes. */
    @Test
    void linesThatOverflowADatagramAreRefused() {
        int linesThatFit = 64;
        SendLine kilobyte = new SendLine(SendValue.LEVEL, "/" + "x".repeat(1_002), true);
        new OscEncoder(Collections.nCopies(linesThatFit, kilobyte));
        assertThrows(
                IllegalArgumentException.class, () -> new OscEncoder(Collections.nCopies(linesThatFit + 1, kilobyte)));
    }

    @Test
    void aFrameCostsNoNewObject() {
        OscEncoder encoder = new OscEncoder(Frames.ALL_LINES);
        long bytes = Allocation.bytesOf(MEASURED_FRAMES, i -> Frames.packet(encoder, Frames.PLAYING, (i & 7) == 0));
        assertTrue(bytes < ALLOCATION_SLACK_BYTES, () -> bytes + " bytes for " + MEASURED_FRAMES + " frames");
    }

    @Test
    void theCountOfBytesWouldSeeAnObjectAFrame() {
        long[][] kept = new long[1][];
        long bytes = Allocation.bytesOf(MEASURED_FRAMES, i -> kept[0] = new long[] {i});
        assertTrue(bytes > 10 * ALLOCATION_SLACK_BYTES, () -> bytes + " bytes");
    }
}
