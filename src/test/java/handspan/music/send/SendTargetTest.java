package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SendTargetTest {
    /** IPv6 numbers stand in brackets before a port: RFC 3986 (2005), section 3.2.2. */
    @ParameterizedTest
    @CsvSource({
        "udp:127.0.0.1:9000, 127.0.0.1, 9000",
        "udp:localhost:9001, localhost, 9001",
        "udp:stage.local:1, stage.local, 1",
        "udp:10.0.0.7:65535, 10.0.0.7, 65535",
        "udp:[::1]:9000, ::1, 9000",
        "udp:[fe80::1%eth0]:9000, fe80::1%eth0, 9000",
    })
    void theWrittenFormIsReadAndWrittenTheSame(String text, String host, int port) {
        SendTarget target = SendTarget.parse(text);
        assertEquals(new SendTarget(SendTarget.Protocol.UDP, host, port), target);
        assertEquals(text, target.text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "udp",
                "udp:",
                "udp:9000",
                "udp::9000",
                "udp:127.0.0.1",
                "udp:127.0.0.1:",
                "127.0.0.1:9000",
                "tcp:127.0.0.1:9000",
                "UDP:127.0.0.1:9000",
                "udp:127.0.0.1:0",
                "udp:127.0.0.1:65536",
                "udp:127.0.0.1:99999999999",
                "udp:127.0.0.1:-1",
                "udp:127.0.0.1:+9000",
                "udp:127.0.0.1:90 00",
                "udp:127.0.0.1:nine",
                "udp:[]:9000",
                "udp:[:9000",
                "udp:[::1:9000",
                "udp:::1:9000",
                "udp:fe80::1",
                "udp:my stage:9000",
                "udp: :9000",
            })
    void anythingElseIsRefusedWithTheWayToWriteIt(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> SendTarget.parse(text));
        assertTrue(String.valueOf(e.getMessage()).startsWith("target "), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains(": "), e.getMessage());
    }

    @Test
    void aTargetOutsideTheRangeOfPortsIsRefusedHoweverItIsMade() {
        new SendTarget(SendTarget.Protocol.UDP, "stage", 65_535);
        assertThrows(IllegalArgumentException.class, () -> new SendTarget(SendTarget.Protocol.UDP, "stage", 65_536));
        assertThrows(IllegalArgumentException.class, () -> new SendTarget(SendTarget.Protocol.UDP, "stage", 0));
        assertThrows(IllegalArgumentException.class, () -> new SendTarget(SendTarget.Protocol.UDP, "", 9_000));
    }
}
