package handspan.outside.serial;

import handspan.live.session.PortInfo;
import java.util.List;

/** What ports are there. Asking takes some ten milliseconds: never on a thread that plays. */
@FunctionalInterface
interface PortCatalogue {
    /** The ports that are there now, without opening any. */
    List<PortInfo> ports();
}
