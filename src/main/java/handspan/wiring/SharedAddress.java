package handspan.wiring;

import handspan.music.send.MidiTarget;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import java.util.List;
import java.util.Optional;

/**
 * That two instruments send to one place in such a way that nobody could tell them apart there.
 *
 * @param first one of them
 * @param second the other
 * @param what both send
 * @param target where to
 */
public record SharedAddress(Seat first, Seat second, String what, String target) {
    /** The first of its kind among seats; empty where all can be told apart. */
    public static Optional<SharedAddress> among(List<Seat> seats) {
        for (int i = 0; i < seats.size(); i++) {
            for (int j = i + 1; j < seats.size(); j++) {
                Optional<SharedAddress> shared = between(seats.get(i), seats.get(j));
                if (shared.isPresent()) {
                    return shared;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<SharedAddress> between(Seat first, Seat second) {
        SendPlan one = first.profile().send();
        SendPlan other = second.profile().send();
        for (SendTarget target : one.targets()) {
            if (other.targets().contains(target)) {
                Optional<String> what = target instanceof MidiTarget ? channel(one, other) : address(one, other);
                if (what.isPresent()) {
                    return what.map(both -> new SharedAddress(first, second, both, target.text()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> address(SendPlan one, SendPlan other) {
        List<String> taken = addresses(other);
        return addresses(one).stream().filter(taken::contains).findFirst();
    }

    private static List<String> addresses(SendPlan plan) {
        return plan.lines().stream().filter(SendLine::on).map(SendLine::address).toList();
    }

    private static Optional<String> channel(SendPlan one, SendPlan other) {
        int channel = one.midi().channel();
        return channel == other.midi().channel() ? Optional.of("MIDI channel " + channel) : Optional.empty();
    }

    /** In words, with what to do. */
    public String words() {
        boolean midi = !what.startsWith("/");
        return "rooms '" + first.room() + "' and '" + second.room() + "' both send " + what + " to " + target
                + ", where nobody could tell them apart: "
                + (midi
                        ? "give one another channel, 'handspan send --room " + second.room() + " --midi-channel N'"
                        : "call the instruments by names of their own for this time, a --as NAME for each room in"
                                + " their order, or give one other addresses with 'handspan send'");
    }
}
