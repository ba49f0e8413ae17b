package handspan.outside.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import handspan.instrument.sensor.PortIdentity;
import handspan.live.session.Link;
import handspan.live.session.LinkException;
import handspan.live.session.LinkFacts;
import handspan.live.session.LinkOpener;
import handspan.live.session.PortInfo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Opens a board's port and opens it again after a loss: by the board's identity where it has one, else by the port's
 * name; each time with a fresh port object, because an old one remembers where a link pointed and would open the wrong
 * device after a replug. Used by one thread at a time.
 */
public final class SerialOpener implements LinkOpener {
    /** The speed that stands for "find it by trying". */
    public static final int AUTO = 0;

    private static final int DATA_BITS = 8;

    private final Os os = Os.here();
    private final String name;
    private final PortCatalogue catalogue;
    private final @Nullable PortIdentity remembered;
    private @Nullable PortIdentity seen;
    private int baud;
    private boolean wasOpen;

    /**
     * An opener.
     *
     * @param name of the port, for example {@code /dev/ttyACM0} or {@code COM3}
     * @param baud link speed; {@link #AUTO} to find it
     * @param remembered the board that is expected there; null where none is known
     */
    public SerialOpener(String name, int baud, @Nullable PortIdentity remembered) {
        this(name, baud, remembered, SerialPorts::present);
    }

    SerialOpener(String name, int baud, @Nullable PortIdentity remembered, PortCatalogue catalogue) {
        this.name = PortCheck.callout(os, name, path -> Files.exists(Path.of(path)));
        this.baud = baud;
        this.remembered = remembered;
        this.catalogue = catalogue;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Link open() throws LinkException {
        PortSearch.Found found = search();
        SerialPort port = opened(found.name());
        try {
            String note = found.note();
            if (baud == AUTO) {
                BaudTrial.Found tried = new BaudTrial(new OpenPort(port)).run(found.name());
                baud = tried.baud();
                note = joined(note, tried.words());
                // reads wait from now on
                port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
            }
            seen = identityOf(found.name()).or(() -> Optional.ofNullable(seen)).orElse(null);
            wasOpen = true;
            return new SerialLink(port, new LinkFacts(found.name(), baud, seen, joined(note, shared(found.name()))));
        } catch (LinkException | RuntimeException e) {
            port.closePort();
            throw e;
        }
    }

    /** The board that was there before must be there again; one that a room remembers is only looked for. */
    private PortSearch.Found search() throws LinkException {
        PortIdentity before = seen;
        PortIdentity wanted = before == null ? remembered : before;
        return wanted == null
                ? new PortSearch.Found(name, "")
                : new PortSearch(PortCheck.device(name), Optional.of(wanted), before != null).among(catalogue.ports());
    }

    private SerialPort opened(String at) throws LinkException {
        PortCheck check = new PortCheck(os, at, wasOpen ? null : catalogue);
        check.refuseWhatIsNoPort();
        SerialPort port;
        try {
            port = SerialPort.getCommPort(at);
        } catch (SerialPortInvalidPortException e) {
            throw check.missing();
        }
        port.setComPortParameters(
                baud == AUTO ? BaudTrial.RATES.get(0) : baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setComPortTimeouts(
                baud == AUTO ? SerialPort.TIMEOUT_NONBLOCKING : SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
        // what the board said before is stale
        port.flushIOBuffers();
        if (!port.openPort()) {
            throw check.refusal(port.getLastErrorCode());
        }
        return port;
    }

    private Optional<PortIdentity> identityOf(String at) {
        String device = PortCheck.device(at);
        return catalogue.ports().stream()
                .filter(port -> port.name().equals(at) || port.name().equals(device))
                .findFirst()
                .flatMap(PortInfo::identity);
    }

    /** That somebody else reads along, where the system tells: each gets part of the bytes then. */
    private String shared(String at) {
        Path path = os == Os.LINUX ? PortCheck.path(at) : null;
        List<PortHolder> others = path == null ? List.of() : PortHolder.othersOf(path);
        return others.isEmpty()
                ? ""
                : others.get(0).words() + " has this port open, too: each of you gets only part of the lines, end it";
    }

    private static String joined(String first, String second) {
        return first.isEmpty() ? second : second.isEmpty() ? first : first + "; " + second;
    }
}
