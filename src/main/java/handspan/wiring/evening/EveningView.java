package handspan.wiring.evening;

import handspan.live.session.Snapshot;
import java.util.Optional;

/**
 * An evening as it stands at one moment: all that a window draws. Immutable.
 *
 * @param doing what is being done meanwhile, in words; empty when nothing is
 * @param arrival the instrument and how it is connected
 * @param keeping the rooms, and the one that is worked on
 * @param measuring holds that are being taken, and what came of the last ones
 * @param sounding where sound goes
 * @param thought what the room that is worked on can hold
 * @param snapshot of the open instrument
 * @param taking recordings: one that runs in place of a board, one that is made, those that are kept
 * @param surveyed sensors that are being judged, and what came of it
 * @param practice notes that are asked for, and what came of the last run
 */
public record EveningView(
        String doing,
        Arrival arrival,
        Keeping keeping,
        Measuring measuring,
        Sounding sounding,
        Thought thought,
        Optional<Snapshot> snapshot,
        Taking taking,
        Surveyed surveyed,
        Practice practice) {
    /** With neither a recording nor a survey nor practice. */
    public EveningView(
            String doing,
            Arrival arrival,
            Keeping keeping,
            Measuring measuring,
            Sounding sounding,
            Thought thought,
            Optional<Snapshot> snapshot) {
        this(
                doing,
                arrival,
                keeping,
                measuring,
                sounding,
                thought,
                snapshot,
                Taking.nothing(),
                Surveyed.nothing(),
                Practice.first());
    }

    EveningView with(Thought other) {
        return new EveningView(
                doing, arrival, keeping, measuring, sounding, other, snapshot, taking, surveyed, practice);
    }

    EveningView doing(String words) {
        return new EveningView(
                words, arrival, keeping, measuring, sounding, thought, snapshot, taking, surveyed, practice);
    }

    EveningView with(Arrival other) {
        return new EveningView(
                doing, other, keeping, measuring, sounding, thought, snapshot, taking, surveyed, practice);
    }

    EveningView with(Keeping other) {
        return new EveningView(
                doing, arrival, other, measuring, sounding, thought, snapshot, taking, surveyed, practice);
    }

    EveningView with(Measuring other) {
        return new EveningView(doing, arrival, keeping, other, sounding, thought, snapshot, taking, surveyed, practice);
    }

    EveningView with(Sounding other) {
        return new EveningView(
                doing, arrival, keeping, measuring, other, thought, snapshot, taking, surveyed, practice);
    }

    EveningView with(Optional<Snapshot> other) {
        return new EveningView(
                doing, arrival, keeping, measuring, sounding, thought, other, taking, surveyed, practice);
    }

    EveningView with(Taking other) {
        return new EveningView(
                doing, arrival, keeping, measuring, sounding, thought, snapshot, other, surveyed, practice);
    }

    EveningView with(Surveyed other) {
        return new EveningView(
                doing, arrival, keeping, measuring, sounding, thought, snapshot, taking, other, practice);
    }

    EveningView with(Practice other) {
        return new EveningView(
                doing, arrival, keeping, measuring, sounding, thought, snapshot, taking, surveyed, other);
    }
}
