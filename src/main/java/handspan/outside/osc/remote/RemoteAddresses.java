package handspan.outside.osc.remote;

import handspan.music.send.OscAddress;
import handspan.outside.osc.packet.OscPattern;
import handspan.outside.osc.packet.ReceivedMessage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The addresses of one instrument: {@code /handspan/NAME/WORD}. Addresses of messages may be patterns by the rules of
 * Open Sound Control 1.0, and then mean every address that they match. Pure, immutable.
 */
public final class RemoteAddresses {
    /** What the addresses of every instrument begin with. */
    public static final String ROOT = "/handspan/";

    private final String prefix;

    /** @param instrument its name */
    public RemoteAddresses(String instrument) {
        this.prefix = ROOT + OscAddress.part(instrument) + "/";
    }

    /**
     * What a message asks for.
     *
     * @param orders in the order of the table
     * @param refusals why it is not obeyed, in words; both are empty when its address means nothing here
     */
    public record Asked(List<RemoteOrder> orders, List<String> refusals) {
        /** Copies the lists. */
        public Asked {
            orders = List.copyOf(orders);
            refusals = List.copyOf(refusals);
        }

        /** Whether the address means something here. */
        public boolean isKnown() {
            return !orders.isEmpty() || !refusals.isEmpty();
        }
    }

    /** What all of its addresses begin with, a slash at the end. */
    public String prefix() {
        return prefix;
    }

    /** The address of a word. */
    public String of(RemoteWord word) {
        return prefix + word.word();
    }

    /** Reads a message. */
    public Asked read(ReceivedMessage message) {
        Predicate<String> means;
        try {
            String address = message.address();
            means = OscPattern.isPattern(address) ? OscPattern.of(address)::matches : address::equals;
        } catch (IllegalArgumentException e) {
            return new Asked(List.of(), List.of(String.valueOf(e.getMessage())));
        }
        List<RemoteOrder> orders = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (RemoteWord word : RemoteWord.values()) {
            if (means.test(of(word))) {
                RemoteOrder order = word.order(message);
                if (order == null) {
                    refusals.add(word.word() + " takes " + word.takes());
                } else {
                    orders.add(order);
                }
            }
        }
        return new Asked(orders, refusals);
    }
}
