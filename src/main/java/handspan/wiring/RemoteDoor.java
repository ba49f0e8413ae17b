package handspan.wiring;

import handspan.outside.osc.PacketSource;
import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.PacketDecoder;
import handspan.outside.osc.packet.PacketWords;
import handspan.outside.osc.remote.RemoteAddresses;
import handspan.wiring.RemoteNews.Fate;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * The one door for orders from outside: looks at each packet, lets in what is short, well formed, known, within its
 * range and not too much, and hands it to the desk of each instrument that is meant. All else is told to the porter's
 * book and goes nowhere. Called by the receiver's thread; what comes is acted on as it arrives, whatever its time tag.
 */
final class RemoteDoor implements PacketSource.Listener {
    /** No order is as long as a fifth of that. */
    static final int MOST_BYTES = 1_024;

    private final List<RemoteDesk> desks;
    private final RemoteBook book;

    /**
     * A door.
     *
     * @param instruments that obey
     * @param answers sends a packet
     * @param book where all is written down
     */
    RemoteDoor(List<RemoteInstrument> instruments, BiConsumer<ByteBuffer, InetSocketAddress> answers, RemoteBook book) {
        boolean alone = instruments.size() == 1;
        this.desks = instruments.stream()
                .map(instrument -> new RemoteDesk(instrument, alone, answers, book))
                .toList();
        this.book = book;
    }

    /** What the addresses that are obeyed begin with, of each instrument. */
    List<String> prefixes() {
        return desks.stream().map(RemoteDesk::prefix).toList();
    }

    /** Carries out what was too fast, as far as it may be by now; called some times a second. */
    synchronized void onTick(long timeNanos) {
        desks.forEach(desk -> desk.onTick(timeNanos));
    }

    @Override
    public synchronized void onPacket(ByteBuffer packet, InetSocketAddress sender, long timeNanos) {
        book.onPacket();
        if (packet.remaining() > MOST_BYTES) {
            String what = packet.remaining() + " bytes (" + MOST_BYTES + " at most)";
            book.note(Fate.TOO_LONG, what, sender, timeNanos);
            return;
        }
        OscPart part = PacketDecoder.decode(packet, timeNanos);
        List<OscPart.Message> messages = PacketDecoder.messages(part);
        Optional<String> wrong = PacketDecoder.defects(part).stream()
                .map(PacketWords::of)
                .findFirst()
                .or(() -> messages.stream()
                        .filter(message -> !message.clean())
                        .map(PacketWords::of)
                        .findFirst());
        if (wrong.isPresent()) {
            book.note(Fate.MALFORMED, wrong.get(), sender, timeNanos);
            return;
        }
        messages.forEach(message -> read(message, sender, timeNanos));
    }

    /** A pattern may mean several instruments; what is wrong with it is said once. */
    private void read(OscPart.Message message, InetSocketAddress sender, long timeNanos) {
        Set<String> refusals = new LinkedHashSet<>();
        boolean known = false;
        for (RemoteDesk desk : desks) {
            RemoteAddresses.Asked asked = desk.read(message.message());
            known |= asked.isKnown();
            refusals.addAll(asked.refusals());
            asked.orders().forEach(order -> desk.carryOut(order, sender, timeNanos));
        }
        if (!known) {
            book.note(Fate.UNKNOWN, PacketWords.of(message), sender, timeNanos);
        }
        refusals.forEach(reason -> book.note(Fate.REFUSED, PacketWords.of(message) + ": " + reason, sender, timeNanos));
    }
}
