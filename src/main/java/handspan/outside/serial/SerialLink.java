package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import handspan.live.session.Link;
import handspan.live.session.LinkFacts;

/**
 * An open serial port. Reads wait in the system until bytes come (semi-blocking without a time-out); a port that has
 * gone gives -1 at once and for ever, so whoever reads must close it then.
 */
final class SerialLink implements Link {
    private final SerialPort port;
    private final LinkFacts facts;

    SerialLink(SerialPort port, LinkFacts facts) {
        this.port = port;
        this.facts = facts;
    }

    @Override
    public int read(byte[] buffer) {
        int count = port.readBytes(buffer, buffer.length);
        // 0 is no news without a time-out set: it can only mean that the port is closing
        return count > 0 ? count : -1;
    }

    @Override
    public LinkFacts facts() {
        return facts;
    }

    @Override
    public void close() {
        port.closePort();
    }
}
