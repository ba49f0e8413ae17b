package handspan.live.session;

import handspan.instrument.survey.ChannelGuess;
import handspan.instrument.survey.ChannelReport;
import handspan.instrument.survey.FoundHands;
import handspan.instrument.survey.WavePart;
import handspan.live.path.HandsNow;
import handspan.music.practice.Attempt;
import handspan.music.practice.WantedNote;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.room.Hold;
import java.util.List;
import java.util.Optional;

/** What an activity shows of itself. Immutable. */
public sealed interface ActivityView {
    /** What plays, where something does. */
    default Optional<Playing> played() {
        return Optional.empty();
    }

    /** Nothing runs, or the line shape is still being learned. */
    record Idle() implements ActivityView {}

    /**
     * Watching.
     *
     * @param ratePerS readings a second
     * @param jitterMs standard deviation of the time between readings
     * @param names of the slots
     * @param values latest number of each slot; NaN where the latest line had none
     * @param guesses what each slot probably is
     */
    record Watching(
            double ratePerS, double jitterMs, List<String> names, List<Double> values, List<ChannelGuess> guesses)
            implements ActivityView {}

    /**
     * Finding the hands.
     *
     * @param part which is asked for
     * @param found what came of it; empty until it is over
     */
    record FindingHands(WavePart part, Optional<FoundHands> found) implements ActivityView {}

    /**
     * Surveying.
     *
     * @param count readings so far
     * @param seconds from the first to the last
     * @param ratePerS readings a second
     * @param jitterMs standard deviation of the time between readings
     * @param reports what is known of each channel; only once {@code ended}
     */
    record Surveying(long count, double seconds, double ratePerS, double jitterMs, List<ChannelReport> reports)
            implements ActivityView {}

    /**
     * Calibrating.
     *
     * @param captured steps done
     * @param steps steps in all
     * @param prompt what the player is asked for; empty when done
     * @param reason why it can't be captured yet; may be empty
     * @param ratePerS readings a second
     * @param holds captured so far
     * @param done whether all steps are captured
     */
    record Calibrating(
            int captured, int steps, String prompt, String reason, double ratePerS, List<Hold> holds, boolean done)
            implements ActivityView {}

    /**
     * Playing.
     *
     * @param state what the instrument is doing
     * @param tuning that plays, with what keys added to it
     * @param frame what was sent last
     * @param frames how many were sent
     * @param spikes readings of the pitch hand held back
     * @param ratePerS readings a second, lately
     * @param lightMute why light closes the sound, in words; empty when it does not
     * @param hint what is worth a word between songs; empty while a hand plays, and when nothing is
     * @param sensorTrouble what is wrong with a hand's sensor while lines still come; empty when nothing is
     * @param stopped whether sound has gone for good after a stop
     * @param hands where the hands are, whether they sound or not
     * @param sent the latest frames that were sent
     */
    record Playing(
            PlayState state,
            Tuning tuning,
            Optional<SoundFrame> frame,
            long frames,
            long spikes,
            double ratePerS,
            String lightMute,
            String hint,
            String sensorTrouble,
            boolean stopped,
            HandsNow hands,
            Recent<SoundFrame> sent)
            implements ActivityView {
        @Override
        public Optional<Playing> played() {
            return Optional.of(this);
        }

        /** A view without what only charts look at. */
        public Playing(
                PlayState state,
                Tuning tuning,
                Optional<SoundFrame> frame,
                long frames,
                long spikes,
                double ratePerS,
                String lightMute,
                String hint,
                String sensorTrouble,
                boolean stopped) {
            this(
                    state,
                    tuning,
                    frame,
                    frames,
                    spikes,
                    ratePerS,
                    lightMute,
                    hint,
                    sensorTrouble,
                    stopped,
                    HandsNow.UNKNOWN,
                    Recent.none());
        }
    }

    /**
     * Practising.
     *
     * @param playing the instrument that plays all the while
     * @param wanted the note that is asked for; empty before the first reading, and when the course is over
     * @param reason why the hand does not count as resting yet; may be empty
     * @param attempts notes that were answered
     * @param notes of the course
     * @param over whether all are answered
     */
    record Practising(
            Playing playing,
            Optional<WantedNote> wanted,
            String reason,
            List<Attempt> attempts,
            int notes,
            boolean over)
            implements ActivityView {
        /** Copies the list. */
        public Practising {
            attempts = List.copyOf(attempts);
        }

        @Override
        public Optional<Playing> played() {
            return Optional.of(playing);
        }
    }
}
