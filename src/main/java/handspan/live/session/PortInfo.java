package handspan.live.session;

import handspan.instrument.sensor.PortIdentity;
import java.util.Optional;

/**
 * A port that a board may be plugged into.
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
public record PortInfo(
        String name,
        String description,
        int vendorId,
        int productId,
        String serialNumber,
        String location,
        boolean canBeOpened,
        String remedy) {
    /** By what the board is known again; empty where the port is none of USB. */
    public Optional<PortIdentity> identity() {
        return vendorId < 0 || productId < 0
                ? Optional.empty()
                : Optional.of(new PortIdentity(vendorId, productId, serialNumber, location));
    }
}
