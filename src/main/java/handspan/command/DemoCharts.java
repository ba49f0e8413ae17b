package handspan.command;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.NoteChance;
import handspan.show.chart.Picture;
import handspan.show.chart.RawTrace;
import handspan.show.chart.Theme;
import handspan.wiring.TakeReadings;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** The demo's charts. */
final class DemoCharts {
    private DemoCharts() {}

    static List<Picture> of(DemoStage stage, RoomProfile profile, DemoPassage.Played played) throws IOException {
        Tuning tuning = profile.tunings().get(0);
        List<NoteChance> chances =
                NoteChance.of(profile.room(), tuning, profile.room().aim());
        return List.of(
                Picture.passage(played.trace(), tuning, Theme.LIGHT),
                Picture.pitchLadder(profile, tuning, chances, Theme.LIGHT),
                Picture.level(profile, Theme.LIGHT),
                Picture.steadyQuick(profile, tuning, FeelBudget.of(profile.room(), tuning), Theme.LIGHT),
                Picture.rawReadings(rawTrace(stage, profile), Theme.LIGHT));
    }

    private static RawTrace rawTrace(DemoStage stage, RoomProfile profile) throws IOException {
        HandSetup pitch = profile.room().pitch();
        LineShape shape = profile.room().instrument().shape();
        if (shape == null) {
            throw new IllegalStateException("a calibrated room without a line shape");
        }
        int slot = shape.indexOf(pitch.channel().channel());
        Sensor sensor = profile.room().sensor(pitch);
        List<Reading> readings = TakeReadings.of(stage.take(), OptionalDouble.empty(), shape);
        double[] timesS = new double[readings.size()];
        double[] values = new double[readings.size()];
        boolean[] taken = new boolean[readings.size()];
        for (int i = 0; i < timesS.length; i++) {
            Reading reading = readings.get(i);
            timesS[i] = Nanos.toSeconds(reading.timeNanos() - readings.get(0).timeNanos());
            values[i] = reading.has(slot) ? reading.value(slot) : 0;
            taken[i] = reading.has(slot) && sensor.hasReading(values[i]);
        }
        return new RawTrace(
                pitch.channel().channel() + " (pitch hand)",
                pitch.channel().unit().word(),
                timesS,
                values,
                taken,
                OptionalDouble.of(
                        sensor.raw(pitch.response().physical(pitch.zone().nearMm()))),
                OptionalDouble.of(
                        sensor.raw(pitch.response().physical(pitch.zone().farMm()))));
    }
}
