package handspan.instrument.sensor;

import java.util.Locale;

/**
 * By what a board on USB is known again, whatever name its port gets: maker and product, and its serial number, or else
 * the socket that it is plugged into.
 *
 * @param vendorId of USB, 0..65535
 * @param productId of USB, 0..65535
 * @param serialNumber may be empty: cheap boards have none
 * @param location where it is plugged in, as the system writes its topology; may be empty
 */
public record PortIdentity(int vendorId, int productId, String serialNumber, String location) {
    private static final int MOST = 0xffff;

    /** Checks the numbers. */
    public PortIdentity {
        if (vendorId < 0 || vendorId > MOST) {
            throw new IllegalArgumentException("USB vendor " + vendorId + " (0.." + MOST + ")");
        }
        if (productId < 0 || productId > MOST) {
            throw new IllegalArgumentException("USB product " + productId + " (0.." + MOST + ")");
        }
    }

    /** Whether both are boards of one kind. */
    public boolean isSameKind(PortIdentity other) {
        return vendorId == other.vendorId && productId == other.productId;
    }

    /** Whether both are one board: by serial number where both have one, by socket where neither has. */
    public boolean isSameBoard(PortIdentity other) {
        if (!isSameKind(other) || serialNumber.isEmpty() != other.serialNumber.isEmpty()) {
            return false;
        }
        return serialNumber.isEmpty() ? isSameSocket(other) : serialNumber.equals(other.serialNumber);
    }

    /** Whether both are plugged into one socket, as far as that is told. */
    public boolean isSameSocket(PortIdentity other) {
        return !location.isEmpty() && location.equals(other.location);
    }

    /** In words. */
    public String words() {
        return String.format(Locale.ROOT, "USB %04x:%04x", vendorId, productId)
                + (serialNumber.isEmpty() ? "" : " " + serialNumber)
                + (location.isEmpty() ? "" : " at " + location);
    }
}
