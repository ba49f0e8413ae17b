package handspan.wiring;

import handspan.live.session.PlayDesk;
import handspan.outside.osc.packet.BundleWriter;
import handspan.outside.osc.packet.ReceivedMessage;
import handspan.outside.osc.remote.Allowance;
import handspan.outside.osc.remote.RemoteAddresses;
import handspan.outside.osc.remote.RemoteOrder;
import handspan.wiring.RemoteNews.Fate;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * Carries out what one instrument is ordered, as far as it is not too much, and writes down what became of it.
 *
 * <p>To close the sound is never too much: repeated, it changes nothing. Of tuning, transposition and trim the latest
 * that were too much are kept and carried out as soon as they may be, so that a fader that is moved quickly ends where
 * it was left.
 */
final class RemoteDesk {
    /** Changes of tuning, transposition and trim. */
    private static final double SETTINGS_PER_S = 50;

    /** All else: a fader that is moved must not keep the sound from being opened. */
    private static final double OTHERS_PER_S = 20;

    private final RemoteInstrument instrument;
    private final RemoteAddresses addresses;
    private final String who;
    private final BiConsumer<ByteBuffer, InetSocketAddress> answers;
    private final RemoteBook book;
    private final Allowance settings = new Allowance(SETTINGS_PER_S, SETTINGS_PER_S);
    private final Allowance others = new Allowance(OTHERS_PER_S, OTHERS_PER_S);
    private final LateOrders late = new LateOrders();

    /**
     * A desk.
     *
     * @param alone whether nobody else obeys: then its name need not be said
     * @param answers sends a packet
     * @param book where all is written down
     */
    RemoteDesk(
            RemoteInstrument instrument,
            boolean alone,
            BiConsumer<ByteBuffer, InetSocketAddress> answers,
            RemoteBook book) {
        this.instrument = instrument;
        this.addresses = new RemoteAddresses(instrument.name());
        this.who = alone ? "" : instrument.name() + ": ";
        this.answers = answers;
        this.book = book;
    }

    /** What its addresses begin with. */
    String prefix() {
        return addresses.prefix();
    }

    /** What a message asks of it. */
    RemoteAddresses.Asked read(ReceivedMessage message) {
        return addresses.read(message);
    }

    /** Carries out what was too fast, as far as it may be by now. */
    void onTick(long timeNanos) {
        while (!late.isEmpty() && settings.take(timeNanos)) {
            LateOrders.Late order = late.take();
            obey(order.order(), order.sender(), timeNanos);
        }
    }

    /** Carries an order out, now or later, or writes down why not. */
    void carryOut(RemoteOrder order, InetSocketAddress sender, long timeNanos) {
        boolean closes = order instanceof RemoteOrder.Mute mute && mute.on();
        boolean mayWait = LateOrders.mayWait(order);
        boolean allowed = closes || (mayWait ? settings : others).take(timeNanos);
        (allowed ? late.outdate(order) : late.keep(order, sender))
                .ifPresent(old -> book.note(Fate.TOO_FAST, who + old.order().words(), sender, timeNanos));
        if (allowed) {
            obey(order, sender, timeNanos);
        } else if (!mayWait) {
            book.note(Fate.TOO_FAST, who + order.words(), sender, timeNanos);
        }
    }

    private void obey(RemoteOrder order, InetSocketAddress sender, long timeNanos) {
        try {
            Optional<String> refusal = turn(order, sender);
            Fate done = order instanceof RemoteOrder.Tell ? Fate.ANSWERED : Fate.OBEYED;
            book.note(refusal.isEmpty() ? done : Fate.REFUSED, who + refusal.orElse(order.words()), sender, timeNanos);
        } catch (IllegalStateException e) {
            // the session takes no more commands
            book.note(Fate.REFUSED, who + order.words() + ": " + e.getMessage(), sender, timeNanos);
        }
    }

    private Optional<String> turn(RemoteOrder order, InetSocketAddress sender) {
        PlayDesk desk = instrument.desk();
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

    /** Its addresses are none of those that are obeyed, so that two doors can't talk to each other for ever. */
    private ByteBuffer answer() {
        PlayDesk.Setting set = instrument.desk().setting();
        String now = addresses.prefix() + "now/";
        return new BundleWriter()
                .add(now + "state", instrument.state().get())
                .add(now + "mute", set.muted() ? 1 : 0)
                .add(now + "tuning", set.tuning(), set.number())
                .add(now + "transpose", set.transpose())
                .add(now + "trim", (float) set.trimCents())
                .add(now + "room", instrument.room())
                .packet();
    }
}
