package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCPacket;
import com.illposed.osc.argument.OSCTimeTag64;
import handspan.outside.osc.Oracle;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PacketDecoderTest {
    private static final String BUNDLE_HEAD = "2362756e646c6500 0000000000000001";

    private static OscPart read(byte[] packet) {
        return PacketDecoder.decode(ByteBuffer.wrap(packet), 42);
    }

    private static OscPart readHex(String hex) {
        return read(Oracle.hex(hex));
    }

    private static String words(OscPart part) {
        if (part instanceof OscPart.Bundle bundle) {
            return PacketWords.of(bundle) + " "
                    + bundle.parts().stream().map(PacketDecoderTest::words).toList();
        }
        return part instanceof OscPart.Message message
                ? PacketWords.of(message)
                : PacketWords.of((OscPart.Defect) part);
    }

    /**
     * OpenSound Control Specification 1.0, page of examples (M. Wright, 2002), both messages; datagrams out of the
     * tests of the library python-osc (public domain); the blob follows from the padding rules.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    2f6f7363696c6c61746f722f342f6672657175656e6379002c66000043dc0000 | /oscillator/4/frequency ,f 440.0
                    2f666f6f000000002c69697366660000000003e8ffffffff68656c6c6f0000003f9df3b640b5b22d | /foo ,iisff 1000 -1 "hello" 1.234 5.678
                    2f53594e430000002c66000000000000 | /SYNC ,f 0.0
                    2f53594e430000002c6600003f000000 | /SYNC ,f 0.5
                    2362756e646c65000000000000000001 | bundle, at once, empty []
                    2362756e646c65000000000000000001000000142f4c464f5f526174650000002c6600003e8ccccd | bundle, at once, 1 part [/LFO_Rate ,f 0.275]
                    2f6200002c6200000000000301020300 | /b ,b blob of 3 bytes: 01 02 03
                    """)
    void packetsOfOthersAreToldInWords(String hex, String words) {
        assertEquals(words, words(readHex(hex)));
    }

    /** OSC 1.0: strings of the section "Atomic Data Types", type tags of the page of examples. */
    @ParameterizedTest
    @CsvSource({
        "4f534300, OSC",
        "6461746100000000, data",
        "2c660000, ',f'",
        "2c69697366666600, ',iisfff'",
        "2c000000, ','",
        "2c69626200000000, ',ibb'",
    })
    void stringsAreTakenWithTheirPadding(String hex, String text) throws BrokenRule {
        PacketCursor cursor = new PacketCursor(ByteBuffer.wrap(Oracle.hex(hex)), 0);
        assertEquals(text, cursor.string("it"));
        assertEquals(0, cursor.left());
        assertEquals("", cursor.remark());
    }

    /** The reserved tags of OSC 1.0, table "Other Argument Types". */
    @Test
    void allTypesOfTheSpecificationAreTold() {
        OscPart part = readHex("2f620000 2c685464 464e6374 5b695b69 5d5d5349 726d0000"
                + "0000000000000005 3ff0000000000000 00000041 83aa7e8080000000 00000001 00000002 61000000 ff8000ff"
                + "00903c7f");
        assertEquals(
                "/b ,hTdFNct[i[i]]SIrm 5 true 1.0 false nil 'A' at 1970-01-01T00:00:00.500Z [ 1 [ 2 ] ] \"a\" impulse"
                        + " #ff8000ff midi 00903c7f",
                words(part));
        OscPart.Message message = (OscPart.Message) part;
        assertTrue(message.clean());
        assertEquals(
                "[5, true, 1.0, false, null, A, 1970-01-01T00:00:00.500Z, [1, [2]], a, impulse, ff8000ff, 00903c7f]",
                PlainValues.of(message.message()).toString());
    }

    /** RFC 5905 (2010), Figure 4, and RFC 4330 (2006), section 3, for what follows 2036. */
    @ParameterizedTest
    @CsvSource({
        "83aa7e8000000000, 1970-01-01T00:00:00Z",
        "876ce58000000000, 1972-01-01T00:00:00Z",
        "bc16708000000000, 1999-12-31T00:00:00Z",
        "83aa7e8080000000, 1970-01-01T00:00:00.5Z",
        "0000000000000000, 2036-02-07T06:28:16Z",
    })
    void timeTagsAreToldAsDates(String tag, String date) {
        assertEquals(Instant.parse(date), OscTimeTag.instant(Long.parseUnsignedLong(tag, 16)));
    }

    @Test
    void bundlesAreToldAsTheyLieInEachOther() {
        OSCTimeTag64 later = OSCTimeTag64.valueOf(0x83aa_7e80_0000_0000L);
        OSCTimeTag64 earlier = OSCTimeTag64.valueOf(0x83aa_7e70_0000_0000L);
        OSCBundle inner = new OSCBundle(List.of(new OSCMessage("/b", List.of(2))), earlier);
        OSCBundle outer = new OSCBundle(
                List.of(new OSCMessage("/a", List.of(1)), inner, new OSCMessage("/c", List.of(3))), later);
        assertEquals(
                "bundle, at 1970-01-01T00:00:00Z, 3 parts   (odd: a bundle within is dated before it)"
                        + " [/a ,i 1, bundle, at 1969-12-31T23:59:44Z, 1 part [/b ,i 2], /c ,i 3]",
                words(read(Oracle.write(outer))));
    }

    /** Each rule of OSC 1.0 with a packet that breaks it alone, and the byte counted by hand. */
    @ParameterizedTest
    @CsvSource({
        "'', 0, it is empty",
        "2f620000 2c690000 000000, 0, length 11 bytes is not a multiple of 4",
        "62610000 2c000000, 0, '\"ba\" does not start with /'",
        "2f626364 2f626364, 0, address is not ended",
        "2f620000 69000000, 4, type tags do not start with a comma",
        "2f620000 2c697369, 4, type tags is not ended",
        "2f620000 2c690000, 8, argument 1 (i) is cut off: 4 bytes are needed; 0 are left",
        "2f620000 2c696600 00000001, 12, argument 2 (f) is cut off",
        "2f620000 2c640000 00000001, 8, argument 1 (d) is cut off: 8 bytes are needed; 4 are left",
        "2f620000 2c730000 61616161, 8, argument 1 (s) is not ended",
        "2f620000 2c620000 7fffffff, 8, argument 1 (b) says it has 2147483647 bytes; 0 are left",
        "2f620000 2c620000 ffffffff, 8, argument 1 (b) says it has -1 bytes",
        "2f620000 2c695100 00000001, 6, type tag \"Q\" is not known",
        "2f620000 2c5b6900 00000001, 7, an array [ is not closed",
        "2f620000 2c5d0000, 5, ] closes no array",
        "23627566 00000000, 0, it starts with # and is no bundle",
        "2362756e646c6500 00000000, 8, time tag of the bundle is cut off: 8 bytes are needed; 4 are left",
    })
    void whatIsBrokenIsToldByRuleAndByte(String hex, int atByte, String rule) {
        OscPart.Defect defect = assertInstanceOf(OscPart.Defect.class, readHex(hex));
        assertEquals(atByte, defect.atByte(), defect.rule());
        assertTrue(defect.rule().replace(", ", "; ").contains(rule.replace(", ", "; ")), defect.rule());
        assertTrue(words(defect).contains("at byte " + atByte + ";"), words(defect));
    }

    @Test
    void brokenBytesAreShown() {
        assertEquals(
                "not Open Sound Control 1.0: length 6 bytes is not a multiple of 4, at byte 0; 6 bytes: 68 65 6c 6c 6f"
                        + " 0a  |hello.|",
                words(read("hello\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII))));
    }

    /** OSC 1.0, "OSC Messages": receivers should be robust in the case of a missing type tag string. */
    @Test
    void aMessageWithoutTypeTagsIsBorneWith() {
        OscPart.Message message = assertInstanceOf(OscPart.Message.class, readHex("2f620000"));
        assertTrue(message.clean() && message.remark().contains("no type tags"), message.remark());
    }

    @ParameterizedTest
    @CsvSource({
        "2f620000 2c690000 00000001 00000000, 4 bytes are left behind the last argument",
        "2f620001 2c000000, padding of address",
        "2f622063 00000000 2c000000, blank or #",
        "2fc3a900 2c000000, address is not ASCII",
        "2f620000 2c730000 e9000000, argument 1 (s) is not ASCII",
    })
    void whatIsOnlyOddIsReadAndTold(String hex, String remark) {
        OscPart.Message message = assertInstanceOf(OscPart.Message.class, readHex(hex));
        assertTrue(!message.clean() && message.remark().contains(remark), message.remark());
    }

    @Test
    void aBrokenElementCostsItsNeighboursNothing() {
        OscPart part = readHex(BUNDLE_HEAD + "00000008 2f610000 2c000000" + "00000008 78000000 2c000000"
                + "00000008 2f630000 2c000000" + "00000009 2f640000 2c000000 01000000");
        assertEquals(
                List.of("/a", "/c"),
                PacketDecoder.messages(part).stream()
                        .map(message -> message.message().address())
                        .toList());
        assertEquals(2, PacketDecoder.defects(part).size());
        OscPart.Bundle bundle = (OscPart.Bundle) part;
        assertEquals(32, ((OscPart.Defect) bundle.parts().get(1)).atByte(), "counted from the start of the packet");
        assertEquals(52, ((OscPart.Defect) bundle.parts().get(3)).atByte());
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
        assertTrue(words(PacketDecoder.decode(packet.flip(), 0)).contains("nested more than 8 deep"));
    }

    /** Packets as JavaOSC 0.8 writes them, read by it and by this decoder. */
    @Test
    void randomMessagesAreReadAsTheLibraryReadsThem() {
        Random random = new Random(3);
        OscPacketReader reader = new OscPacketReader();
        for (int i = 0; i < 5_000; i++) {
            byte[] packet = Oracle.write(random(random, 3));
            OscPacket expected = reader.read(ByteBuffer.wrap(packet), 42);
            assertEquals("", expected.defect());
            List<ReceivedMessage> read = PacketDecoder.messages(read(packet)).stream()
                    .map(OscPart.Message::message)
                    .toList();
            assertEquals(expected.messages(), read);
        }
    }

    private static OSCPacket random(Random random, int depth) {
        if (depth > 0 && random.nextInt(3) == 0) {
            List<OSCPacket> parts = new ArrayList<>();
            for (int n = random.nextInt(4); n > 0; n--) {
                parts.add(random(random, depth - 1));
            }
            return new OSCBundle(parts, OSCTimeTag64.valueOf(random.nextLong()));
        }
        List<@Nullable Object> arguments = new ArrayList<>();
        for (int n = random.nextInt(6); n > 0; n--) {
            arguments.add(
                    switch (random.nextInt(7)) {
                        case 0 -> random.nextInt();
                        case 1 -> Float.intBitsToFloat(random.nextInt());
                        case 2 -> "x".repeat(random.nextInt(9));
                        case 3 -> random.nextLong();
                        case 4 -> random.nextDouble();
                        case 5 -> random.nextBoolean();
                        default -> null;
                    });
        }
        return new OSCMessage("/" + "moth/".repeat(random.nextInt(4)) + "a", arguments);
    }

    @Test
    void anyBytesAreDecodedAndTold() {
        Random random = new Random(4);
        byte[] right = Oracle.write(new OSCBundle(List.of(
                new OSCMessage("/moth/note", List.of(57, -3.5f, "a", new byte[] {1, 2, 3, 4, 5})),
                new OSCBundle(List.of(new OSCMessage("/b", List.of(List.of(1, 2))))))));
        int broken = 0;
        for (int i = 0; i < 100_000; i++) {
            byte[] packet = i % 2 == 0 ? new byte[random.nextInt(120)] : right.clone();
            if (i % 2 == 0) {
                random.nextBytes(packet);
            }
            for (int wrong = 0; i % 2 == 1 && wrong <= random.nextInt(4); wrong++) {
                packet[random.nextInt(packet.length)] = (byte) random.nextInt();
            }
            OscPart part = read(packet);
            broken += PacketDecoder.defects(part).isEmpty() ? 0 : 1;
            assertTrue(words(part).length() < 20_000);
            for (OscPart.Message message : PacketDecoder.messages(part)) {
                ReceivedMessage heard = message.message();
                assertEquals(heard.arguments().size(), PlainValues.of(heard).size());
            }
        }
        assertTrue(broken > 60_000 && broken < 95_000, broken + " broken");
    }

    /** 65,507 bytes are the most a datagram carries. */
    @Test
    void theWordsOfAHugePacketAreBounded() {
        byte[] text = Oracle.write(new OSCMessage("/b", List.of("x".repeat(60_000), new byte[4_000])));
        assertTrue(words(read(text)).length() < 5_000);
        ByteBuffer tags = ByteBuffer.allocate(60_000).putInt(0x2f620000);
        tags.put((byte) ',');
        while (tags.position() < 59_990) {
            tags.put((byte) 'T');
        }
        assertTrue(words(PacketDecoder.decode(tags.rewind(), 0)).length() < 5_000);
    }
}
