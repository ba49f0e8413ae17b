package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import java.io.IOException;

/** How a target gets at its connections. */
@FunctionalInterface
interface StreamOpener {
    /**
     * Looks the host up and connects; may take seconds.
     *
     * @throws java.net.UnknownHostException if the host's name is not known
     * @throws java.net.ConnectException if nobody listens there
     * @throws IOException if it fails otherwise
     */
    StreamConnection open(NetworkTarget target) throws IOException;
}
