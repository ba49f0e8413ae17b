package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.survey.FoundHands;
import handspan.instrument.survey.HandWave;
import handspan.instrument.survey.WavePart;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds out which number follows which hand: asks for no hand, the one, the other, each for some seconds. */
final class FindingHands implements Activity {
    private final HandWave wave;
    private WavePart part = WavePart.AWAY;
    private long partNanos;
    private @Nullable FoundHands found;
    private boolean untold = true;

    FindingHands(LineShape shape, long startNanos) {
        this.wave = new HandWave(shape);
        this.partNanos = startNanos;
    }

    @Override
    public void onReading(Reading reading) {
        long countsFrom = partNanos + Nanos.ofSeconds(part.readySeconds());
        if (found == null && reading.timeNanos() >= countsFrom && reading.timeNanos() < endNanos()) {
            wave.onReading(part, reading);
        }
    }

    @Override
    public void onTick(long timeNanos) {
        if (found != null || timeNanos < endNanos()) {
            return;
        }
        Optional<WavePart> next = part.next();
        if (next.isEmpty()) {
            found = wave.found();
        } else {
            part = next.get();
            partNanos = timeNanos;
            untold = true;
        }
    }

    @Override
    public void onEnd() {
        found = wave.found();
    }

    private long endNanos() {
        return partNanos + Nanos.ofSeconds(part.readySeconds() + part.seconds());
    }

    @Override
    public long nextDeadlineNanos() {
        return found == null ? endNanos() : Long.MAX_VALUE;
    }

    @Override
    public List<Event.What> takeEvents() {
        if (!untold) {
            return List.of();
        }
        untold = false;
        return List.of(new Event.WaveAsked(part));
    }

    @Override
    public boolean isDone() {
        return found != null;
    }

    @Override
    public ActivityView view() {
        return new ActivityView.FindingHands(part, Optional.ofNullable(found));
    }
}
