package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.LinkException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Error numbers of POSIX errno.h as Linux has them: ENOENT 2, EAGAIN 11 (a lock that is taken), EACCES 13, EBUSY 16,
 * ENOTTY 25; of Windows: ERROR_FILE_NOT_FOUND 2, ERROR_ACCESS_DENIED 5 (the port is open elsewhere); EAGAIN of macOS is
 * 35.
 */
class PortCheckTest {
    private static PortCheck check(Os os, String name) {
        return new PortCheck(os, name, List::of);
    }

    @ParameterizedTest
    @CsvSource({
        "LINUX, /dev/ttyHANDSPAN99, 2, MISSING, sudo dmesg",
        "LINUX, /dev/ttyHANDSPAN99, 11, BUSY, sudo fuser -v /dev/ttyHANDSPAN99",
        "LINUX, /dev/ttyHANDSPAN99, 16, BUSY, in use by another program",
        "LINUX, /dev/ttyHANDSPAN99, 25, NOT_A_PORT, /dev/ttyACM0",
        "LINUX, /dev/ttyHANDSPAN99, 71, REFUSED, system error 71",
        "MAC, /dev/cu.handspan99, 2, MISSING, ls /dev/cu.*",
        "MAC, /dev/cu.handspan99, 35, BUSY, lsof /dev/cu.handspan99",
        "MAC, /dev/cu.handspan99, 16, BUSY, in use by another program",
        "MAC, /dev/cu.handspan99, 13, DENIED, ls -l /dev/cu.handspan99",
        "MAC, /dev/cu.handspan99, 25, NOT_A_PORT, /dev/cu.usbmodem",
        "WINDOWS, COM12, 2, MISSING, Device Manager",
        "WINDOWS, COM12, 5, BUSY, in use by another program",
        "WINDOWS, COM12, 25, NOT_A_PORT, COM3"
    })
    void eachErrorNumberSaysWhatItIsAndWhatToDo(Os os, String port, int code, LinkException.Kind kind, String part) {
        LinkException e = check(os, port).refusal(code);
        assertEquals(kind, e.kind());
        assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains("'" + port + "'"), e.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "LINUX, sudo usermod -a -G uucp $USER',log out and in again",
        "MAC, Privacy & Security,ls -l PORT",
        "WINDOWS, close other programs,plug it in again"
    })
    void whoMayNotOpenItIsToldWhatToDoOnEachSystem(Os os, String part, String other) {
        String words = String.valueOf(new PortRefusal(os, "PORT").denied("uucp").getMessage());
        assertTrue(words.contains(part) && words.contains(other), words);
    }

    @Test
    void aPortThatOnlyRootOwnsNamesNoGroup() {
        String words =
                String.valueOf(new PortRefusal(Os.LINUX, "PORT").denied("root").getMessage());
        assertFalse(words.contains("usermod"), words);
        assertTrue(words.contains("chmod"), words);
    }

    @Test
    void aMissingPortNamesThoseThatAreThere() {
        String words = String.valueOf(new PortRefusal(Os.LINUX, "PORT")
                .missing(List.of("/dev/ttyACM1", "/dev/ttyUSB0"))
                .getMessage());
        assertTrue(words.contains("is there: /dev/ttyACM1, /dev/ttyUSB0"), words);
    }

    @Test
    void aSecondCopyIsToldSoByItsNumber() {
        String words = String.valueOf(new PortRefusal(Os.LINUX, "PORT")
                .busy(List.of(new PortHolder(4711, "java", true)))
                .getMessage());
        assertTrue(words.contains("a second handspan (process 4711) has it open"), words);
    }

    @Test
    void aCopyIsKnownByItsClassJarOrScriptAndNothingElseIs() {
        assertTrue(PortHolder.isHandspan(List.of("java", "-cp", "x", "handspan.command.Handspan", "play")));
        assertTrue(PortHolder.isHandspan(List.of("java", "-jar", "/opt/handspan-1.0.jar", "play")));
        assertTrue(PortHolder.isHandspan(List.of("/usr/bin/handspan", "watch")));
        assertFalse(PortHolder.isHandspan(List.of("cat", "/dev/ttyACM0")));
        assertFalse(PortHolder.isHandspan(List.of("less", "handspan.log")));
    }

    /** On macOS opening the call-in twin waits for a carrier that no board gives (tty(4), "call-in" and "call-out"). */
    @Test
    void theCallOutTwinIsTakenOnMac() {
        assertEquals("/dev/cu.usbmodem1", PortCheck.callout(Os.MAC, "/dev/tty.usbmodem1", path -> true));
        assertEquals("/dev/cu.usbmodem1", PortCheck.callout(Os.MAC, "tty.usbmodem1", path -> true));
        assertEquals("/dev/tty.usbmodem1", PortCheck.callout(Os.MAC, "/dev/tty.usbmodem1", path -> false));
        assertEquals("/dev/tty.x", PortCheck.callout(Os.LINUX, "/dev/tty.x", path -> true));
        assertEquals("COM12", PortCheck.callout(Os.WINDOWS, "\\\\.\\COM12", path -> true));
        assertFalse(PortCheck.isListed(Os.MAC, "/dev/tty.usbmodem1"));
        assertTrue(PortCheck.isListed(Os.MAC, "/dev/cu.usbmodem1"));
        assertTrue(PortCheck.isListed(Os.LINUX, "/dev/ttyACM0"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aNameThatNoSystemCouldHaveIsRefused() {
        LinkException e = assertThrows(
                LinkException.class, () -> check(Os.LINUX, "tty\0x").refuseWhatIsNoPort());
        assertEquals(LinkException.Kind.NOT_A_PORT, e.kind());
    }
}
