package handspan.command;

import handspan.live.session.LinkException;
import handspan.wiring.ListenPoint;
import handspan.wiring.RemoteControl;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Remote control on the command line. */
final class RemoteArguments {
    @Option(
            names = "--remote",
            paramLabel = "PORT",
            description = "obey Open Sound Control that comes to this UDP port from this machine:"
                    + " /handspan/INSTRUMENT/ and then mute, tuning, transpose, trim, light or state")
    @Nullable
    String port;

    @Option(
            names = "--remote-at",
            paramLabel = "ADDRESS",
            description = "obey other machines too: listen at this address of this machine, or at a network interface"
                    + " by its name (0.0.0.0: all); whoever reaches it can open the sound")
    @Nullable
    String at;

    /**
     * Listens, where that was asked for.
     *
     * @param realTime whether the instrument runs by the clock
     */
    @Nullable
    RemoteTalk open(Talk talk, boolean realTime) throws UsageException, LinkException {
        String wanted = port;
        if (wanted == null) {
            if (at != null) {
                throw new UsageException("--remote-at without --remote: name the port too");
            }
            return null;
        }
        if (!realTime) {
            throw new UsageException("--remote with --fast: what runs faster than the clock can't be told anything");
        }
        ListenPoint point = UsageException.reading(() -> point(wanted));
        try {
            return new RemoteTalk(talk, RemoteControl.open(point));
        } catch (IOException e) {
            throw new LinkException(LinkException.Kind.BUSY, "remote control: " + e.getMessage());
        }
    }

    private ListenPoint point(String wanted) {
        ListenPoint point = ListenPoint.parse(wanted);
        if (point.protocol() != ListenPoint.Protocol.UDP) {
            throw new IllegalArgumentException(
                    "--remote " + wanted + " (udp): orders come as datagrams, write it like 9001");
        }
        String place = at;
        return place == null ? point : point.at(place);
    }
}
