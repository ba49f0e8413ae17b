package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.survey.ChannelProposer;
import handspan.instrument.survey.Intervals;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Shows what comes. */
final class Watching implements Activity {
    private final LineShape shape;
    private final ChannelProposer proposer;
    private final Intervals intervals = new Intervals();
    private @Nullable Reading latest;

    Watching(LineShape shape) {
        this.shape = shape;
        this.proposer = new ChannelProposer(shape);
    }

    @Override
    public void onReading(Reading reading) {
        intervals.onReading(reading.timeNanos());
        proposer.onReading(reading);
        latest = reading;
    }

    @Override
    public ActivityView view() {
        List<String> names = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        Reading shown = latest;
        for (int i = 0; i < shape.slots().size(); i++) {
            names.add(shape.nameOf(i));
            values.add(shown != null && shown.has(i) ? shown.value(i) : Double.NaN);
        }
        return new ActivityView.Watching(intervals.ratePerS(), intervals.jitterMs(), names, values, proposer.guesses());
    }
}
