package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import handspan.outside.osc.Frames;
import handspan.outside.osc.Oracle;
import handspan.outside.osc.OscEncoder;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OscPacketReaderTest {
    private static final long TIME_NANOS = 42;
    private static final String BUNDLE_HEAD = "2362756e646c6500 0000000000000001";

    private final OscPacketReader reader = new OscPacketReader();

    private OscPacket read(byte[] packet) {
        return reader.read(ByteBuffer.wrap(packet), TIME_NANOS);
    }

    private OscPacket readHex(String hex) {
        return read(Oracle.hex(hex));
    }

    /** Examples Supporting the OpenSound Control 1.0 Spec (M. Wright, 2002), "OSC Message Examples", both. */
    @Test
    void theMessagesOfTheSpecificationAreRead() {
        OscPacket one = readHex("2f6f7363 696c6c61 746f722f 342f6672 65717565 6e637900 2c660000 43dc0000");
        assertEquals(
                List.of(new ReceivedMessage(TIME_NANOS, "/oscillator/4/frequency", "f", List.of(440.0f))),
                one.messages());
        OscPacket two = readHex(
                "2f666f6f 00000000 2c696973 66660000 000003e8 ffffffff" + "68656c6c 6f000000 3f9df3b6 40b5b22d");
        assertEquals(
                List.of(new ReceivedMessage(TIME_NANOS, "/foo", "iisff", List.of(1000, -1, "hello", 1.234f, 5.678f))),
                two.messages());
        assertFalse(two.malformed());
    }

    @Test
    void theBufferStaysAsItWas() {
        ByteBuffer packet = ByteBuffer.wrap(Oracle.hex("ffffffff 2f620000 2c000000 ffffffff"));
        packet.position(4).limit(12);
        assertEquals("/b", reader.read(packet, 0).messages().get(0).address());
        assertEquals(4, packet.position());
        assertEquals(12, packet.limit());
    }

    /** OSC-blob: int32 count, bytes, zero bytes up to a multiple of 4 (OSC 1.0, "Atomic Data Types"). */
    @Test
    void whatFollowsABlobIsReadFromBehindIt() {
        ReceivedMessage message = readHex("2f620000 2c626900 00000003 01020300 00000007")
                .messages()
                .get(0);
        assertArrayEquals(new byte[] {1, 2, 3}, (byte[]) message.arguments().get(0));
        assertEquals(7, message.arguments().get(1));
    }

    @Test
    void otherTypesOfTheSpecificationAreRead() {
        OscPacket packet = readHex("2f620000 2c685464 464e6374 5b69695d 53000000"
                + "0000000000000005 3ff0000000000000 00000041 83aa7e8000000000 00000001 00000002 61000000");
        ReceivedMessage message = packet.messages().get(0);
        assertEquals("hTdFNct[ii]S", message.typeTags());
        assertEquals(
                "[5, true, 1.0, false, null, A, " + 0x83aa_7e80_0000_0000L + ", [1, 2], a]",
                message.arguments().toString());
    }

    @Test
    void nestedBundlesAreLaidFlatInOrder() {
        OSCBundle inner = new OSCBundle(List.of(new OSCMessage("/b", List.of(2)), new OSCMessage("/c", List.of(3))));
        OSCBundle outer =
                new OSCBundle(List.of(new OSCMessage("/a", List.of(1)), inner, new OSCMessage("/d", List.of(4))));
        assertEquals(
                List.of("/a", "/b", "/c", "/d"),
                read(Oracle.write(outer)).messages().stream()
                        .map(ReceivedMessage::address)
                        .toList());
    }

    /** OSC 1.0, "OSC Type Tag String": a message with an unrecognised type tag should be discarded. */
    @Test
    void aMessageOfUnknownTypeIsDiscardedAndItsNeighboursAreKept() {
        OscPacket packet = readHex(BUNDLE_HEAD + "00000008 2f610000 2c000000" + "00000008 2f620000 2c510000"
                + "00000008 2f630000 2c000000");
        assertEquals(2, packet.messages().size());
        assertEquals(1, packet.discarded());
        assertFalse(packet.malformed());
    }

    /** Each broken packet stands beside one that differs as little as can be and is right. */
    @ParameterizedTest
    @CsvSource({
        "2f620000 2c690000 00000001, 2f620000 2c690000 000000, length not a multiple of 4",
        "2f620000 2c690000 00000001, 2f620000 2c690000, argument missing",
        "2f620000 2c000000, 2f620000 78000000, no comma before the type tags",
        "2f620000 2c000000, 2f626262 2c2c2c2c, text without end",
        "2f620000 2c000000, 2f2a0000 2c000000, address is a pattern",
        "2f620000 2c000000, 62000000 2c000000, address without slash",
        "2f620000 2c620000 00000000, 2f620000 2c620000 7fffffff, blob longer than the packet",
        "2f620000 2c620000 00000000, 2f620000 2c620000 ffffffff, blob of negative length",
        "2362756e646c6500 0000000000000001, 2362756e646c6500 00000000, bundle without time tag",
        "2362756e646c6500 0000000000000001, 2362756e646c6501 0000000000000001, not quite a bundle",
    })
    void aPacketThatBreaksTheRulesIsADefectAndNoException(String right, String broken, String why) {
        assertFalse(readHex(right).malformed(), right);
        assertTrue(readHex(broken).malformed(), why);
    }

    @ParameterizedTest
    @CsvSource({"00000000", "00000003", "0000000c", "7fffffff", "fffffff8"})
    void aBundleElementOfWrongLengthIsADefectAndWhatCameBeforeIsKept(String length) {
        String first = BUNDLE_HEAD + "00000008 2f610000 2c000000";
        assertEquals("", readHex(first + "00000008 2f620000 2c000000").defect());
        OscPacket packet = readHex(first + length + "2f620000 2c000000");
        assertTrue(packet.malformed());
        assertEquals("/a", packet.messages().get(0).address());
    }

    @Test
    void bundlesInBundlesWithoutEndAreADefect() {
        int deepest = 2_000;
        ByteBuffer packet = ByteBuffer.allocate(20 * deepest + 16);
        for (int left = deepest; left >= 0; left--) {
            OscBytes.putBundleHead(packet, 1);
            if (left > 0) {
                packet.putInt(20 * left - 4);
            }
        }
        assertTrue(reader.read(packet.flip(), 0).defect().contains("nested"));
        assertTrue(readHex("").malformed());
    }

    @Test
    void randomBytesNeverThrow() {
        Random random = new Random(22);
        int malformed = 0;
        for (int i = 0; i < 10_000; i++) {
            byte[] packet = new byte[random.nextInt(120)];
            random.nextBytes(packet);
            malformed += read(packet).malformed() ? 1 : 0;
        }
        assertTrue(malformed > 9_900, "random bytes are hardly ever a packet: " + malformed);
    }

    @Test
    void rightPacketsWithWrongBytesNeverThrow() {
        Random random = new Random(23);
        byte[] right = Oracle.bytes(Frames.packet(new OscEncoder(Frames.ALL_LINES), Frames.PLAYING, true));
        int malformed = 0;
        int whole = 0;
        for (int i = 0; i < 10_000; i++) {
            byte[] packet = right.clone();
            for (int wrong = 0; wrong <= random.nextInt(3); wrong++) {
                packet[random.nextInt(packet.length)] = (byte) random.nextInt();
            }
            OscPacket read = read(packet);
            assertNotNull(read.messages());
            malformed += read.malformed() ? 1 : 0;
            whole += read.messages().size() == Frames.ALL_LINES.size() ? 1 : 0;
        }
        assertTrue(malformed > 1_000 && whole > 1_000, malformed + " malformed, " + whole + " whole");
    }
}
