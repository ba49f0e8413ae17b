package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import java.io.IOException;
import java.net.NetworkInterface;
import java.net.StandardSocketOptions;
import java.nio.channels.DatagramChannel;

/** How datagrams to a multicast group are sent. */
final class Groups {
    /** Datagrams do not leave the network they are sent on. */
    static final int HOPS = 1;

    private Groups() {}

    /**
     * Sets how far datagrams go, that this machine hears them too, and where they leave it.
     *
     * @throws WrongWayException if there is no network interface of the name that the target gives
     */
    static void prepare(DatagramChannel channel, NetworkTarget target) throws IOException {
        channel.setOption(StandardSocketOptions.IP_MULTICAST_TTL, HOPS);
        channel.setOption(StandardSocketOptions.IP_MULTICAST_LOOP, true);
        if (target.zone().isPresent()) {
            String name = target.zone().get();
            NetworkInterface zone = NetworkInterface.getByName(name);
            if (zone == null) {
                throw new WrongWayException("target " + target.text() + ": this machine has no network interface '"
                        + name + "': name one it has, or leave it out");
            }
            channel.setOption(StandardSocketOptions.IP_MULTICAST_IF, zone);
        }
    }
}
