package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import handspan.live.session.Link;
import handspan.live.session.LinkException;
import handspan.live.session.LinkOpener;

/**
 * Opens a serial port by name, each time with a fresh port object: an old one remembers where a link pointed and would
 * open the wrong device after a replug.
 */
public final class SerialOpener implements LinkOpener {
    private static final int DATA_BITS = 8;

    private final String name;
    private final int baud;

    /**
     * An opener.
     *
     * @param name of the port, for example {@code /dev/ttyACM0} or {@code COM3}
     * @param baud link speed
     */
    public SerialOpener(String name, int baud) {
        this.name = name;
        this.baud = baud;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Link open() throws LinkException {
        PortCheck.refuseWhatIsNoPort(name);
        SerialPort port;
        try {
            port = SerialPort.getCommPort(name);
        } catch (SerialPortInvalidPortException e) {
            throw PortCheck.missing(name);
        }
        port.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
        // what the board said before is stale
        port.flushIOBuffers();
        if (!port.openPort()) {
            throw PortCheck.refusal(name, port.getLastErrorCode());
        }
        return new SerialLink(port);
    }
}
