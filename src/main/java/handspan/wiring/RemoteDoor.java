package handspan.wiring;

import handspan.live.session.PlayDesk;
import handspan.outside.osc.PacketSource;
import handspan.outside.osc.packet.BundleWriter;
import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.PacketDecoder;
import handspan.outside.osc.packet.PacketWords;
import handspan.outside.osc.remote.Allowance;
import handspan.outside.osc.remote.RemoteAddresses;
import handspan.outside.osc.remote.RemoteOrder;
import handspan.wiring.RemoteNews.Fate;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;

/**
 * The one door for orders from outside: looks at each packet, lets in what is short, well formed, known, within its
 * range and not too much, and turns the knobs of the desk. All else is told to the porter's book and goes nowhere.
 * Called by the receiver's thread; what comes is acted on as it arrives, whatever its time tag.
 *
 * <p>To close the sound is never too much: repeated, it changes nothing. Of tuning, transposition and trim the latest
 * that were too much are kept and carried out as soon as they may be, so that a fader that is moved quickly ends where
 * it was left.
 */
final class RemoteDoor implements PacketSource.Listener {
    /** No order is as long as a fifth of that. */
    static final int MOST_BYTES = 1_024;

    /** Changes of tuning, transposition and trim. */
    private static final double SETTINGS_PER_S = 50;

    /** All else: a fader that is moved must not keep the sound from being opened. */
    private static final double OTHERS_PER_S = 20;

    private final RemoteAddresses addresses;
    private final String room;
    private final PlayDesk desk;
    private final Supplier<String> state;
    private final BiConsumer<ByteBuffer, InetSocketAddress> answers;
    private final RemoteBook book;
    private final Allowance settings = new Allowance(SETTINGS_PER_S, SETTINGS_PER_S);
    private final Allowance others = new Allowance(OTHERS_PER_S, OTHERS_PER_S);

    private final LateOrders late = new LateOrders();

    /**
     * A door.
     *
     * @param addresses what is obeyed
     * @param room its name, for answers
     * @param desk whose knobs are turned
     * @param state what the instrument is doing, in a word
     * @param answers sends a packet
     * @param book where all is written down
     */
    RemoteDoor(
            RemoteAddresses addresses,
            String room,
            PlayDesk desk,
            Supplier<String> state,
            BiConsumer<ByteBuffer, InetSocketAddress> answers,
            RemoteBook book) {
        this.addresses = addresses;
        this.room = room;
        this.desk = desk;
        this.state = state;
        this.answers = answers;
        this.book = book;
    }

    /** Carries out what was too fast, as far as it may be by now; called some times a second. */
    synchronized void onTick(long timeNanos) {
        while (!late.isEmpty() && settings.take(timeNanos)) {
            LateOrders.Late order = late.take();
            new Visit(order.sender(), timeNanos).obey(order.order());
        }
    }

    @Override
    public synchronized void onPacket(ByteBuffer packet, InetSocketAddress sender, long timeNanos) {
        Visit visit = new Visit(sender, timeNanos);
        book.onPacket();
        if (packet.remaining() > MOST_BYTES) {
            visit.note(Fate.TOO_LONG, packet.remaining() + " bytes (" + MOST_BYTES + " at most)");
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
            visit.note(Fate.MALFORMED, wrong.get());
            return;
        }
        messages.forEach(visit::read);
    }

    /** One packet and its sender. */
    private final class Visit {
        private final InetSocketAddress sender;
        private final long timeNanos;

        Visit(InetSocketAddress sender, long timeNanos) {
            this.sender = sender;
            this.timeNanos = timeNanos;
        }

        void note(Fate fate, String what) {
            book.note(fate, what, sender, timeNanos);
        }

        void read(OscPart.Message message) {
            RemoteAddresses.Asked asked = addresses.read(message.message());
            if (!asked.isKnown()) {
                note(Fate.UNKNOWN, PacketWords.of(message));
            }
            asked.refusals().forEach(reason -> note(Fate.REFUSED, PacketWords.of(message) + ": " + reason));
            asked.orders().forEach(this::carryOut);
        }

        private void carryOut(RemoteOrder order) {
            boolean closes = order instanceof RemoteOrder.Mute mute && mute.on();
            boolean mayWait = LateOrders.mayWait(order);
            boolean allowed = closes || (mayWait ? settings : others).take(timeNanos);
            (allowed ? late.outdate(order) : late.keep(order, sender))
                    .ifPresent(old -> note(Fate.TOO_FAST, old.order().words()));
            if (allowed) {
                obey(order);
            } else if (!mayWait) {
                note(Fate.TOO_FAST, order.words());
            }
        }

        void obey(RemoteOrder order) {
            try {
                Optional<String> refusal = turn(order);
                Fate done = order instanceof RemoteOrder.Tell ? Fate.ANSWERED : Fate.OBEYED;
                note(refusal.isEmpty() ? done : Fate.REFUSED, refusal.orElse(order.words()));
            } catch (IllegalStateException e) {
                // the session takes no more commands
                note(Fate.REFUSED, order.words() + ": " + e.getMessage());
            }
        }

        private Optional<String> turn(RemoteOrder order) {
            if (order instanceof RemoteOrder.Mute mute) {
                desk.mute(mute.on());
            } else if (order instanceof RemoteOrder.TuningByName named) {
                return desk.choose(named.name());
            } else if (order instanceof RemoteOrder.TuningByNumber numbered) {
                return desk.choose(numbered.number());
            } else if (order instanceof RemoteOrder.Transpose transpose) {
                return desk.transposeTo(transpose.semitones());
            } else if (order instanceof RemoteOrder.Trim trim) {
                return desk.trimTo(trim.cents());
            } else if (order instanceof RemoteOrder.RetakeLight) {
                desk.retakeLight();
            } else {
                answers.accept(answer(), sender);
            }
            return Optional.empty();
        }
    }

    /** Its addresses are none of those that are obeyed, so that two doors can't talk to each other for ever. */
    private ByteBuffer answer() {
        PlayDesk.Setting set = desk.setting();
        String now = addresses.prefix() + "now/";
        return new BundleWriter()
                .add(now + "state", state.get())
                .add(now + "mute", set.muted() ? 1 : 0)
                .add(now + "tuning", set.tuning(), set.number())
                .add(now + "transpose", set.transpose())
                .add(now + "trim", (float) set.trimCents())
                .add(now + "room", room)
                .packet();
    }
}
