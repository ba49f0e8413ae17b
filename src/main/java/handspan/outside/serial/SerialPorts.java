package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
        for (PortInfo port : present()) {
            ports.add(checked(port, tryOpening));
        }
        return ports;
    }

    /** Lists them as they are told of, none opened or checked. */
    static List<PortInfo> present() {
        List<PortInfo> ports = new ArrayList<>();
        for (SerialPort port : SerialPort.getCommPorts()) {
            if (PortCheck.isListed(Os.here(), port.getSystemPortPath())) {
                ports.add(new PortInfo(
                        PortCheck.callout(Os.here(), port.getSystemPortPath(), path -> false),
                        known(port.getDescriptivePortName()),
                        port.getVendorID(),
                        port.getProductID(),
                        known(port.getSerialNumber()),
                        known(port.getPortLocation()),
                        true,
                        ""));
            }
        }
        return ports;
    }

    private static PortInfo checked(PortInfo port, boolean tryOpening) {
        try {
            new PortCheck(Os.here(), port.name(), SerialPorts::present).refuseWhatIsNoPort();
            if (tryOpening) {
                new SerialOpener(port.name(), 115_200, null).open().close();
            }
            return port;
        } catch (LinkException e) {
            return new PortInfo(
                    port.name(),
                    port.description(),
                    port.vendorId(),
                    port.productId(),
                    port.serialNumber(),
                    port.location(),
                    false,
                    String.valueOf(e.getMessage()));
        }
    }

    private static String known(@Nullable String text) {
        return text == null || text.equals("Unknown") || text.equals("0-0") ? "" : text;
    }
}
