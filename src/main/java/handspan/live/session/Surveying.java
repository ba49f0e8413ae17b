package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.survey.Survey;
import java.util.List;

/** Judges the sensors. */
final class Surveying implements Activity {
    private final Survey survey;
    private boolean ended;

    Surveying(LineShape shape, Command.Survey command) {
        this.survey = new Survey(shape, command.channels(), command.sensors());
    }

    @Override
    public void onReading(Reading reading) {
        survey.onReading(reading);
    }

    @Override
    public boolean onCommand(Command command) {
        if (command instanceof Command.Stop) {
            ended = true;
            return true;
        }
        return false;
    }

    @Override
    public void onEnd() {
        ended = true;
    }

    @Override
    public boolean isDone() {
        return ended;
    }

    @Override
    public ActivityView view() {
        return new ActivityView.Surveying(
                survey.count(),
                survey.seconds(),
                survey.ratePerS(),
                survey.rateJitterMs(),
                ended ? survey.reports() : List.of());
    }
}
