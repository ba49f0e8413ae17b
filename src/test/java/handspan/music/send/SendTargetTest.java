package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
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
        assertEquals(new NetworkTarget(NetworkTarget.Protocol.UDP, host, port), target);
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
                "sctp:127.0.0.1:9000",
                "tcp:9000",
                "midi:",
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
        new NetworkTarget(NetworkTarget.Protocol.UDP, "stage", 65_535);
        assertThrows(
                IllegalArgumentException.class, () -> new NetworkTarget(NetworkTarget.Protocol.UDP, "stage", 65_536));
        assertThrows(IllegalArgumentException.class, () -> new NetworkTarget(NetworkTarget.Protocol.UDP, "stage", 0));
        assertThrows(IllegalArgumentException.class, () -> new NetworkTarget(NetworkTarget.Protocol.UDP, "", 9_000));
    }

    /** Multicast: 224.0.0.0/4 (RFC 5771, section 3) and ff00::/8 (RFC 4291, section 2.7), by their first and last. */
    @ParameterizedTest
    @CsvSource({
        "224.0.0.0",
        "239.255.255.255",
        "239.1.2.3%eth0",
        "[ff00::]",
        "[ffff::1]",
        "[FF02::1%eth0]",
    })
    void aGroupIsOnlyReachedByItsWord(String host) {
        assertEquals(
                "udp-multicast:" + host + ":9000",
                SendTarget.parse("udp-multicast:" + host + ":9000").text());
        for (String way : List.of("udp", "udp-broadcast", "tcp", "tcp-slip")) {
            IllegalArgumentException e =
                    assertThrows(IllegalArgumentException.class, () -> SendTarget.parse(way + ":" + host + ":9000"));
            assertTrue(
                    String.valueOf(e.getMessage()).endsWith("write udp-multicast:" + host + ":9000"), e.getMessage());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"223.255.255.255", "240.0.0.0", "127.0.0.1", "[::1]", "[fe80::1]", "[ff::1]", "[fec0::1]"})
    void aNumberThatIsNoGroupIsNotReachedByTheWordForGroups(String host) {
        SendTarget.parse("udp:" + host + ":9000");
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> SendTarget.parse("udp-multicast:" + host + ":9000"));
        assertTrue(String.valueOf(e.getMessage()).endsWith("write udp:" + host + ":9000"), e.getMessage());
    }

    /**
     * Limited broadcast: RFC 919 (1984), section 7. "There are no broadcast addresses in IPv6": RFC 4291, section 2.
     */
    @Test
    void everyMachineIsOnlyReachedByTheWordForIt() {
        assertEquals(
                "udp-broadcast:255.255.255.255:9000",
                SendTarget.parse("udp-broadcast:255.255.255.255:9000").text());
        for (String refused : List.of("udp:255.255.255.255:9", "tcp:255.255.255.255:9", "udp-broadcast:[::1]:9")) {
            assertThrows(IllegalArgumentException.class, () -> SendTarget.parse(refused), refused);
        }
        SendTarget.parse("udp-broadcast:10.0.0.255:9000");
    }

    @Test
    void aZoneBelongsToTheNumberInVersion6AndStandsBesideItInVersion4() {
        NetworkTarget four = (NetworkTarget) SendTarget.parse("udp-multicast:239.1.2.3%eth0:9000");
        NetworkTarget six = (NetworkTarget) SendTarget.parse("udp-multicast:[ff02::1%eth0]:9000");
        assertEquals("239.1.2.3", four.lookUpHost());
        assertEquals("ff02::1%eth0", six.lookUpHost());
        assertEquals(Optional.of("eth0"), four.zone());
        assertEquals(Optional.of("eth0"), six.zone());
        assertEquals(Optional.empty(), ((NetworkTarget) SendTarget.parse("udp:10.0.0.1:9000")).zone());
    }
}
