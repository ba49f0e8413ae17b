package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;

/** An open port of the library while its speed is looked for. */
final class OpenPort implements TunablePort {
    private final SerialPort port;

    OpenPort(SerialPort port) {
        this.port = port;
    }

    @Override
    public void baud(int baud) {
        port.setBaudRate(baud);
        // what was taken at the speed before
        port.flushIOBuffers();
    }

    @Override
    public int collect(byte[] buffer, int forMs) {
        try {
            Thread.sleep(forMs);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return -1;
        }
        int waiting = port.bytesAvailable();
        return waiting <= 0 ? waiting : port.readBytes(buffer, Math.min(waiting, buffer.length));
    }
}
