package handspan.live.session;

import handspan.instrument.line.Reading;
import java.util.List;

/** What an instrument is used for at the moment. Pure: time comes with the calls. Owned by the path thread. */
sealed interface Activity permits Watching, FindingHands, Surveying, Calibrating, Playing, Practising {
    /** A reading came. */
    void onReading(Reading reading);

    /** All readings that came at one moment have been given. */
    default void onReadingsTaken(long timeNanos) {}

    /** Time passes; called at {@link #nextDeadlineNanos} at the latest. */
    default void onTick(long timeNanos) {}

    /** The link is gone. */
    default void onLost() {}

    /** Lines stop for now, on purpose; those that come next are of another time. */
    default void onBreak() {
        onLost();
    }

    /** Whether the command meant this activity. */
    default boolean onCommand(Command command) {
        return false;
    }

    /** When {@link #onTick} has to be called; {@link Long#MAX_VALUE} for never. */
    default long nextDeadlineNanos() {
        return Long.MAX_VALUE;
    }

    /** What has happened since the last call. */
    default List<Event.What> takeEvents() {
        return List.of();
    }

    /** Whether it is finished. */
    default boolean isDone() {
        return false;
    }

    /** How many numbers of the pitch hand were held back as spikes. */
    default long heldBack() {
        return 0;
    }

    /** Whatever sounds, every target is told "silence" at once. */
    default void silence(long timeNanos) {}

    /** No more readings will come. */
    default void onEnd() {}

    /** What it shows. */
    ActivityView view();
}
