package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.survey.Intervals;
import handspan.room.calibrate.Calibration;
import handspan.room.calibrate.CalibrationEvent;
import java.util.ArrayList;
import java.util.List;

/** Leads through a calibration. */
final class Calibrating implements Activity {
    private final Calibration calibration;
    private final Intervals intervals = new Intervals();

    Calibrating(LineShape shape, Command.Calibrate command) {
        var level = command.instrument().level();
        this.calibration = new Calibration(
                command.plan(),
                shape,
                command.instrument().pitch(),
                command.sensors().get(0),
                level,
                level == null ? null : command.sensors().get(1),
                command.rules());
    }

    @Override
    public void onReading(Reading reading) {
        intervals.onReading(reading.timeNanos());
        calibration.onReading(reading);
    }

    @Override
    public boolean onCommand(Command command) {
        if (command instanceof Command.Undo) {
            calibration.undo();
            return true;
        }
        return false;
    }

    @Override
    public List<Event.What> takeEvents() {
        List<Event.What> events = new ArrayList<>();
        calibration.takeEvents().forEach(event -> events.add(told(event)));
        return events;
    }

    private static Event.What told(CalibrationEvent event) {
        if (event instanceof CalibrationEvent.Asked asked) {
            return new Event.Asked(asked.step(), asked.readySeconds());
        } else if (event instanceof CalibrationEvent.Captured got) {
            return new Event.Captured(got.step(), got.hold(), got.steadiness(), got.fromNanos(), got.toNanos());
        } else if (event instanceof CalibrationEvent.Holding holding) {
            return new Event.Holding(holding.step(), holding.remainingSeconds());
        } else if (event instanceof CalibrationEvent.Undone undone) {
            return new Event.Undone(undone.step(), undone.reason());
        } else if (event instanceof CalibrationEvent.NotYet not) {
            return new Event.NotYet(not.step(), not.reason());
        }
        throw new IllegalStateException("an event that is none of a calibration: " + event);
    }

    @Override
    public boolean isDone() {
        return calibration.isDone();
    }

    @Override
    public ActivityView view() {
        return new ActivityView.Calibrating(
                calibration.captured(),
                calibration.steps(),
                calibration.isDone() ? "" : calibration.step().prompt(),
                calibration.reason(),
                intervals.ratePerS(),
                calibration.holds(),
                calibration.isDone());
    }
}
