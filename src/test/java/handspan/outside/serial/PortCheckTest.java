package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.LinkException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Error numbers of POSIX errno.h as Linux has them: ENOENT 2, EAGAIN 11 (a lock that is taken), EACCES 13, EBUSY 16,
 * ENOTTY 25.
 */
@EnabledOnOs(OS.LINUX)
class PortCheckTest {
    @ParameterizedTest
    @CsvSource({
        "2, MISSING, plug the board in",
        "11, BUSY, in use by another program",
        "13, DENIED, sudo usermod",
        "16, BUSY, in use by another program",
        "25, NOT_A_PORT, not a serial port",
        "71, REFUSED, system error 71"
    })
    void eachErrorNumberSaysWhatItIsAndWhatToDo(int code, LinkException.Kind kind, String part) {
        LinkException e = PortCheck.refusal("/dev/ttyHANDSPAN99", code);
        assertEquals(kind, e.kind());
        assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains("/dev/ttyHANDSPAN99"), e.getMessage());
    }

    @Test
    void aNameThatNoSystemCouldHaveIsRefused() {
        LinkException e = assertThrows(LinkException.class, () -> PortCheck.refuseWhatIsNoPort("tty\0x"));
        assertEquals(LinkException.Kind.NOT_A_PORT, e.kind());
    }
}
