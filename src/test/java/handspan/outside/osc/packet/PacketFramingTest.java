package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.send.NetworkTarget.Protocol;
import handspan.outside.osc.Allocation;
import handspan.outside.osc.Oracle;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PacketFramingTest {
    /** OSC 1.0, examples page, "OSC Message Examples", the first. */
    private static final byte[] OSCILLATOR =
            Oracle.hex("2f6f7363696c6c61746f722f342f6672657175656e637900 2c660000 43dc0000");

    /** Unit-test datagrams of the python-osc library (public domain): a bundle of one message, and a message. */
    private static final byte[] BUNDLE =
            Oracle.hex("2362756e646c6500 0000000000000001 00000014 2f4c464f5f52617465000000 2c660000 3e8ccccd");

    private static final byte[] SYNC = Oracle.hex("2f53594e43000000 2c660000 3f000000");

    private static byte[] framed(PacketFraming framing, byte[]... packets) {
        ByteBuffer out = ByteBuffer.allocate(100_000);
        for (byte[] packet : packets) {
            int before = out.position();
            framing.put(ByteBuffer.wrap(packet), out);
            assertTrue(out.position() - before <= framing.mostBytes(packet.length), "no longer than was said");
        }
        byte[] bytes = new byte[out.flip().remaining()];
        out.get(bytes);
        return bytes;
    }

    private static List<String> packetsIn(PacketSplitter splitter, byte[] stream) {
        List<String> packets = new ArrayList<>();
        splitter.feed(ByteBuffer.wrap(stream), packet -> packets.add(text(packet)));
        return packets;
    }

    private static String text(ByteBuffer packet) {
        byte[] bytes = new byte[packet.remaining()];
        packet.get(bytes);
        return java.util.HexFormat.of().formatHex(bytes);
    }

    private static String text(byte[] packet) {
        return text(ByteBuffer.wrap(packet));
    }

    /** RFC 1055 (J. Romkey, 1988): octal 300, 333, 334, 335, and the decimals that stand beside them. */
    @Test
    void theFourSpecialBytesAreThoseOfTheStandard() {
        assertEquals(192, Slip.END & 0xff);
        assertEquals(219, Slip.ESC & 0xff);
        assertEquals(220, Slip.ESC_END & 0xff);
        assertEquals(221, Slip.ESC_ESC & 0xff);
    }

    /** By hand from RFC 1055 with the END on both sides (Freed and Schmeder, NIME 2009, section 4). */
    @ParameterizedTest
    @CsvSource({
        "414243, c0414243c0",
        "c0, c0dbdcc0",
        "db, c0dbddc0",
        "c0db41, c0dbdcdbdd41c0",
        "01db03, c001dbdd03c0",
        "dbdc, c0dbdddcc0"
    })
    void slipIsByteForByteThatOfTheStandard(String payload, String expected) {
        assertEquals(expected, text(framed(PacketFraming.SLIP, Oracle.hex(payload))));
        assertEquals(List.of(payload), packetsIn(PacketFraming.SLIP.splitter(), Oracle.hex(expected)));
    }

    /** The specification's own example of 32 bytes, and the library's of 40, behind their length (OSC 1.0). */
    @Test
    void theLengthStandsBeforeEachPacketAsABigEndianNumber() {
        byte[] expected = Oracle.hex("00000020" + text(OSCILLATOR) + "00000028" + text(BUNDLE));
        assertArrayEquals(expected, framed(PacketFraming.LENGTH, OSCILLATOR, BUNDLE));
    }

    @ParameterizedTest
    @EnumSource(PacketFraming.class)
    void howeverTheNetworkCutsAStreamItsPacketsAreTheSame(PacketFraming framing) {
        Random random = new Random(41);
        List<String> expected = new ArrayList<>();
        byte[][] sent = new byte[200][];
        for (int i = 0; i < sent.length; i++) {
            sent[i] = new byte[4 * (1 + random.nextInt(30))];
            for (int j = 0; j < sent[i].length; j++) {
                // every other byte special, so that escapes meet every cut
                sent[i][j] = (byte) (random.nextBoolean() ? 0xc0 + 0x1b * random.nextInt(2) : random.nextInt(256));
            }
            expected.add(text(sent[i]));
        }
        byte[] stream = framed(framing, sent);
        for (int most : new int[] {1, 2, 3, 7, 100, 5000, stream.length}) {
            PacketSplitter splitter = framing.splitter();
            List<String> got = new ArrayList<>();
            ByteBuffer rest = ByteBuffer.wrap(stream);
            while (rest.hasRemaining()) {
                int bytes = Math.min(rest.remaining(), 1 + random.nextInt(most));
                splitter.feed(rest.slice(rest.position(), bytes), packet -> got.add(text(packet)));
                rest.position(rest.position() + bytes);
            }
            assertEquals(expected, got, "in pieces of up to " + most);
            assertEquals(0, splitter.garbled());
        }
    }

    @Test
    void emptySlipFramesAreNoPackets() {
        assertEquals(
                List.of(text(SYNC), text(SYNC)),
                packetsIn(
                        PacketFraming.SLIP.splitter(),
                        Oracle.hex("c0c0c0" + text(SYNC) + "c0c0c0" + text(SYNC) + "c0")));
    }

    @Test
    void aSlipStreamThatIsJoinedHalfWayOrGarbledIsFollowedAgainFromTheNextEnd() {
        PacketSplitter splitter = PacketFraming.SLIP.splitter();
        // an ESC before a byte it can't stand before, one before an END, and more than any packet has
        assertEquals(List.of(text(SYNC)), packetsIn(splitter, Oracle.hex("01db4203c0" + "c0" + text(SYNC) + "c0")));
        assertEquals(List.of(text(SYNC)), packetsIn(splitter, Oracle.hex("c001dbc0" + text(SYNC) + "c0")));
        assertEquals(2, splitter.garbled());
        assertEquals(List.of(), packetsIn(splitter, new byte[PacketFraming.MOST_PACKET_BYTES + 1]));
        assertEquals(List.of(text(SYNC)), packetsIn(splitter, Oracle.hex("c0c0" + text(SYNC) + "c0")));
        assertEquals(3, splitter.garbled());
        assertEquals("", splitter.defect());
    }

    @Test
    void aLengthThatCannotBeEndsTheStreamWithAWord() {
        for (String begin : List.of("c02f6100", "ffffffff", "00100001", "47455420")) {
            PacketSplitter splitter = PacketFraming.LENGTH.splitter();
            assertEquals(
                    List.of(text(SYNC)),
                    packetsIn(splitter, Oracle.hex("00000010" + text(SYNC) + begin + "00000010" + text(SYNC))),
                    begin);
            assertEquals(1, splitter.garbled());
            assertTrue(splitter.defect().startsWith("a packet's length is given as "), splitter.defect());
            assertTrue(splitter.defect().endsWith("(tcp-slip)"), splitter.defect());
        }
    }

    /** Memory follows what has come: a length of a mebibyte with nothing behind it costs nothing. */
    @Test
    void aLargeLengthAloneTakesNoMemory() {
        PacketSplitter[] latest = new PacketSplitter[1];
        long bytes = Allocation.bytesOf(100, i -> {
            latest[0] = PacketFraming.LENGTH.splitter();
            latest[0].feed(ByteBuffer.wrap(Oracle.hex("00100000 2f61")), packet -> {});
        });
        assertTrue(bytes < 100 * 10_000, bytes + " bytes");
    }

    @Test
    void onlyConnectionsHaveAFraming() {
        assertEquals(PacketFraming.LENGTH, PacketFraming.of(Protocol.TCP));
        assertEquals(PacketFraming.SLIP, PacketFraming.of(Protocol.TCP_SLIP));
        for (Protocol datagrams : List.of(Protocol.UDP, Protocol.UDP_BROADCAST, Protocol.UDP_MULTICAST)) {
            assertThrows(IllegalArgumentException.class, () -> PacketFraming.of(datagrams));
        }
    }
}
