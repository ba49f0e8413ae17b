package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import handspan.outside.osc.Oracle;
import java.nio.ByteBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OscBytesTest {
    /** Examples Supporting the OpenSound Control 1.0 Spec (M. Wright, 2002), "OSC-string examples". */
    @ParameterizedTest
    @CsvSource({"OSC, 4f534300", "data, 6461746100000000"})
    void textsAreLaidOutAsInTheExamplesOfTheSpecification(String text, String hex) {
        assertArrayEquals(Oracle.hex(hex), OscBytes.string(text));
    }

    /** The same page, "OSC Type Tag String Examples"; the printed padding is that of any string. */
    @ParameterizedTest
    @CsvSource({"f, 2c660000", "iisfff, 2c69697366666600", "'', 2c000000", "ibb, 2c69626200000000"})
    void typeTagsAreLaidOutAsInTheExamplesOfTheSpecification(String types, String hex) {
        byte[] head = OscBytes.messageHead("/a", types);
        assertArrayEquals(Oracle.hex("2f610000" + hex), head);
    }

    /** Unit-test datagram of the python-osc library (public domain): an empty bundle to act upon at once. */
    @Test
    void anEmptyBundleIsItsWordAndTheTimeTag() {
        ByteBuffer packet = ByteBuffer.allocate(OscBytes.BUNDLE_HEAD_BYTES);
        OscBytes.putBundleHead(packet, OscTimeTag.IMMEDIATELY);
        assertArrayEquals(Oracle.hex("2362756e646c6500 0000000000000001"), packet.array());
    }

    @Test
    void onlyTheWholeWordMakesABundle() {
        assertEquals(true, OscBytes.startsAsBundle(ByteBuffer.wrap(Oracle.hex("2362756e646c6500"))));
        assertEquals(false, OscBytes.startsAsBundle(ByteBuffer.wrap(Oracle.hex("2362756e646c6578"))));
        assertEquals(false, OscBytes.startsAsBundle(ByteBuffer.wrap(Oracle.hex("2362756e646c65"))));
    }

    /** OSC-strings are non-null ASCII characters (OSC 1.0, "Atomic Data Types"). */
    @Test
    void textBeyondAsciiOrWithAZeroIsRefused() {
        OscBytes.string("caf~");
        assertThrows(IllegalArgumentException.class, () -> OscBytes.string("caf\u00e9"));
        assertThrows(IllegalArgumentException.class, () -> OscBytes.string("caf\0"));
    }
}
