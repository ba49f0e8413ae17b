package handspan.wiring;

import handspan.number.units.Nanos;
import handspan.outside.osc.UdpPackets;
import handspan.outside.osc.remote.Allowance;
import handspan.outside.osc.remote.RemoteAddresses;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/**
 * Listens for orders to one instrument or several by Open Sound Control. Opened only where the player has asked for it;
 * at loopback unless asked otherwise. What comes before {@link #obey} is passed over.
 *
 * <p>Of a flood no more is read than costs the processor next to nothing: the system throws the rest away, and playing
 * goes on undisturbed.
 */
public final class RemoteControl implements AutoCloseable {
    /** What the addresses of every instrument begin with. */
    public static final String ROOT = RemoteAddresses.ROOT;

    private static final double READ_PER_S = 1_000;
    private static final long PAUSE_NANOS = 2 * Nanos.PER_MS;

    private final Allowance reading = new Allowance(READ_PER_S, READ_PER_S);
    private final RemoteBook book = new RemoteBook();
    private final UdpPackets source;
    private final ListenPoint point;
    private volatile @Nullable RemoteDoor door;

    private RemoteControl(ListenPoint point) throws IOException {
        this.source = UdpPackets.open(point.address(), point.port(), Rigs.CLOCK, this::onPacket);
        this.point = point.withPort(source.address().getPort());
    }

    /**
     * Listens, and obeys nothing yet.
     *
     * @throws IOException if the port can't be had
     */
    public static RemoteControl open(ListenPoint point) throws IOException {
        return new RemoteControl(point);
    }

    private void onPacket(ByteBuffer packet, InetSocketAddress sender, long timeNanos) {
        RemoteDoor open = door;
        if (open != null) {
            open.onPacket(packet, sender, timeNanos);
        }
        if (!reading.take(timeNanos)) {
            LockSupport.parkNanos(PAUSE_NANOS);
        }
    }

    /**
     * Obeys from now on.
     *
     * @param instruments at least one
     * @return what the addresses that are obeyed begin with, of each
     */
    public List<String> obey(List<RemoteInstrument> instruments) {
        RemoteDoor open = new RemoteDoor(instruments, source::answer, book);
        door = open;
        return open.prefixes();
    }

    /** Where it listens, with the port that it really has. */
    public ListenPoint point() {
        return point;
    }

    /** What is to be told since the last call; to be called some times a second, since late orders wait for that. */
    public List<RemoteNews> news() {
        RemoteDoor open = door;
        if (open != null) {
            open.onTick(Rigs.CLOCK.getAsLong());
        }
        return book.take();
    }

    /** Packets that came since it obeys. */
    public long packets() {
        return book.packets();
    }

    /** How many packets or messages had a fate. */
    public long count(RemoteNews.Fate fate) {
        return book.count(fate);
    }

    /** The latest trouble with the network in words; empty when there has been none. */
    public String trouble() {
        return source.trouble();
    }

    @Override
    public void close() {
        source.close();
    }
}
