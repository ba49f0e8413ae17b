package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.util.ArrayList;
import java.util.List;

/** The serial ports of this machine. */
public final class SerialPorts {
    private SerialPorts() {}

    /**
     * Lists them.
     *
     * @param tryOpening whether to open each for a moment to see if it can be; boards start anew when that is done
     */
    public static List<PortInfo> list(boolean tryOpening) {
        List<PortInfo> ports = new ArrayList<>();
        for (SerialPort port : SerialPort.getCommPorts()) {
            ports.add(describe(port, tryOpening));
        }
        return ports;
    }

    private static PortInfo describe(SerialPort port, boolean tryOpening) {
        String name = port.getSystemPortPath();
        String remedy = "";
        boolean can = true;
        try {
            PortCheck.refuseWhatIsNoPort(name);
            if (tryOpening) {
                new SerialOpener(name, 115_200).open().close();
            }
        } catch (LinkException e) {
            can = false;
            remedy = String.valueOf(e.getMessage());
        }
        return new PortInfo(
                name,
                known(port.getDescriptivePortName()),
                port.getVendorID(),
                port.getProductID(),
                known(port.getSerialNumber()),
                known(port.getPortLocation()),
                can,
                remedy);
    }

    private static String known(@org.jspecify.annotations.Nullable String text) {
        return text == null || text.equals("Unknown") || text.equals("0-0") ? "" : text;
    }
}
