package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import handspan.live.session.LinkException;
import java.util.ArrayList;
import java.util.List;

/** The serial ports of this machine. */
public final class SerialPorts {
    private SerialPorts() {}

    /**
     * A port.
     *
     * @param name what to write on the command line
     * @param description what the device says of itself
     * @param vendorId of a USB device; -1 otherwise
     * @param productId of a USB device; -1 otherwise
     * @param serialNumber of a USB device; may be empty
     * @param location where it is plugged in; may be empty
     * @param canBeOpened whether it can be opened now
     * @param remedy what to do where it can't; else empty
     */
    public record Port(
            String name,
            String description,
            int vendorId,
            int productId,
            String serialNumber,
            String location,
            boolean canBeOpened,
            String remedy) {}

    /**
     * Lists them.
     *
     * @param tryOpening whether to open each for a moment to see if it can be; boards start anew when that is done
     */
    public static List<Port> list(boolean tryOpening) {
        List<Port> ports = new ArrayList<>();
        for (SerialPort port : SerialPort.getCommPorts()) {
            ports.add(describe(port, tryOpening));
        }
        return ports;
    }

    private static Port describe(SerialPort port, boolean tryOpening) {
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
        return new Port(
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
