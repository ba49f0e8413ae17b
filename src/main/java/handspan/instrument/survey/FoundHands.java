package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which number follows which hand.
 *
 * @param shape of the lines
 * @param pitchSlot the number that follows the pitch hand; empty when none does
 * @param levelSlot the number that follows the other hand; empty when none does
 * @param guesses what each number probably is, and what it did
 */
public record FoundHands(LineShape shape, OptionalInt pitchSlot, OptionalInt levelSlot, List<ChannelGuess> guesses) {
    /** Copies the guesses. */
    public FoundHands {
        guesses = List.copyOf(guesses);
    }

    /** The pitch hand's channel. */
    public Optional<ChannelGuess> pitch() {
        return at(pitchSlot);
    }

    /** The level hand's channel. */
    public Optional<ChannelGuess> level() {
        return at(levelSlot);
    }

    private Optional<ChannelGuess> at(OptionalInt slot) {
        return slot.isPresent() ? Optional.of(guesses.get(slot.getAsInt())) : Optional.empty();
    }
}
