package handspan.show.report;

import handspan.instrument.sensor.Sensor;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.budget.FeelBudget;
import handspan.show.chart.HoldsChart;
import handspan.show.chart.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What was measured: response, holds and their noise, level, lag against wobble.
 *
 * @param profile of the room
 * @param tuning that is told of
 * @param feel of it
 */
record ReportMeasured(RoomProfile profile, Tuning tuning, FeelBudget feel) {
    private static final double TALL_MM = 84;
    private static final double LOW_MM = 70;

    /** More holds than this are told of in number only. */
    private static final int MOST_HOLDS = 14;

    List<ReportPart> parts() {
        Room room = profile.room();
        List<ReportPart> parts = new ArrayList<>();
        parts.add(new ReportPart.Heading("What was measured"));
        if (HoldsChart.holds(room).isEmpty()) {
            parts.add(new ReportPart.Words(
                    "The profile keeps no holds of the pitch hand: its response and the noise of its"
                            + " holds can't be drawn. A new calibration keeps them."));
        } else {
            parts.add(response(room));
            parts.add(noise(room));
        }
        holds(room, parts);
        parts.add(level(room));
        parts.add(new ReportPart.Chart(
                "Lag against wobble",
                "Wobble of a still hand in cents rms against the ms over which it is smoothed; chosen: "
                        + Figures.text(feel.jitterCents(), 1) + " cents over "
                        + Figures.text(feel.settings().stillLagMs(), 0) + " ms.",
                LOW_MM,
                theme -> Picture.steadyQuick(profile, tuning, feel, theme).low().chart()));
        return parts;
    }

    private static ReportPart response(Room room) {
        boolean fitted = room.pitch().fit() != null && !room.pitch().scaledTravel();
        return new ReportPart.Chart(
                "Response of the pitch hand",
                "What the sensor says, in " + room.sensor(room.pitch()).physicalUnit()
                        + ", against where the hand is, with the holds"
                        + (fitted ? "; below, what is left of each hold in mm." : "."),
                fitted ? TALL_MM : LOW_MM,
                theme -> Picture.response(room, theme).low().chart());
    }

    private static ReportPart noise(Room room) {
        return new ReportPart.Chart(
                "Noise of the holds",
                "Noise of one reading in mm rms at each hold of the pitch hand; at most "
                        + Figures.text(room.pitch().noiseMm(), 2) + " mm.",
                LOW_MM,
                theme -> Picture.holdNoise(room, theme).low().chart());
    }

    private ReportPart level(Room room) {
        return new ReportPart.Chart(
                "Level",
                "Level in dB below full against the place of the level hand, from "
                        + Figures.shortest(profile.level().floorDb()) + " to "
                        + Figures.shortest(profile.level().ceilingDb()) + " dB"
                        + (room.level() == null ? "; there is no level hand, the ceiling plays." : "."),
                LOW_MM,
                theme -> Picture.level(profile, theme).low().chart());
    }

    private static void holds(Room room, List<ReportPart> parts) {
        List<Hold> kept = room.holds().stream()
                .filter(hold -> hold.kind() != StepKind.AIM)
                .toList();
        if (kept.isEmpty()) {
            return;
        }
        parts.add(new ReportPart.Grid(
                "Holds",
                List.of("hold", "value", "u", "noise of a reading", "unit", "readings"),
                kept.stream().limit(MOST_HOLDS).map(hold -> row(room, hold)).toList(),
                0));
        int more = kept.size() - MOST_HOLDS;
        if (more > 0) {
            parts.add(new ReportPart.Words("And " + more + (more == 1 ? " more hold." : " more holds.")));
        }
    }

    private static List<String> row(Room room, Hold hold) {
        HandSetup level = room.level();
        HandSetup hand = hold.hand() == HandRole.PITCH || level == null ? room.pitch() : level;
        Sensor sensor = room.sensor(hand);
        int decimals = sensor.isLength() ? 2 : 4;
        return List.of(
                hold.hand().word() + " " + hold.kind().word() + ruler(hold.mm()),
                Figures.text(hold.physical(), decimals),
                Figures.text(hold.standardUncertainty(), decimals),
                Figures.text(hold.noise(), decimals),
                sensor.physicalUnit(),
                Figures.count(hold.count()));
    }

    private static String ruler(OptionalDouble mm) {
        return mm.isPresent() ? " " + Figures.shortest(mm.getAsDouble()) + " mm" : "";
    }
}
