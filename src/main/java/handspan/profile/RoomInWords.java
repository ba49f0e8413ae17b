package handspan.profile;

import handspan.instrument.sensor.SensorKind;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import handspan.room.budget.AirChange;
import handspan.room.budget.NoteBudget;
import handspan.room.calibrate.AimFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was measured in a room, and what it can promise, a sentence each. */
public final class RoomInWords {
    private RoomInWords() {}

    /** Both hands with their zones, and how well the player reaches. */
    public static List<String> hands(Room room) {
        List<String> lines = new ArrayList<>();
        lines.add("pitch hand: channel " + room.pitch().channel().text() + ", zone " + zone(room.pitch()) + ", noise "
                + Figures.text(room.pitch().noiseMm(), 2) + " mm at " + Figures.text(room.ratePerS(), 1)
                + " readings a second");
        HandSetup level = room.level();
        lines.add(
                level == null
                        ? "level hand: none, level stays at the ceiling while a hand plays"
                        : "level hand: channel " + level.channel().text() + ", " + zone(level));
        lines.add("aim: "
                + AimFit.of(room)
                        .filter(fit -> fit.aim().equals(room.aim()))
                        .map(AimFit::words)
                        .orElse(room.aim().words()));
        restInZone(room).ifPresent(lines::add);
        return lines;
    }

    /**
     * Something was seen with the hands away, where a hand plays: what it is, no sensor tells. It may have been a hand
     * that had not left; else it stands there still, and plays.
     */
    private static Optional<String> restInZone(Room room) {
        HandSetup pitch = room.pitch();
        if (pitch.scaledTravel()) {
            return Optional.empty();
        }
        return room.holds().stream()
                .filter(hold -> hold.kind() == StepKind.REST && hold.hand() == HandRole.PITCH)
                .reduce((before, latest) -> latest)
                .map(hold -> pitch.response().mm(hold.physical()))
                .filter(mm -> pitch.zone().holds(mm))
                .map(mm -> "rest: with the hands away " + Figures.text(mm, 0)
                        + " mm were seen, which is where a hand plays: if it was no hand, clear away what stands there,"
                        + " for it will sound");
    }

    /**
     * A tuning by name, and what pitches a zone plays under it.
     *
     * @param zone of the pitch hand
     */
    public static String tuning(Tuning tuning, Zone zone) {
        return "'" + tuning.name() + "': " + tuning.lowName() + " to " + tuning.highName() + ", "
                + tuning.scale().name() + " on " + tuning.tonic().name() + temperament(tuning) + ", "
                + tuning.snapping().words() + ", " + tuning.direction().word() + ", A4 = "
                + Figures.text(tuning.reference().a4Hz(), 1) + " Hz" + shifted(tuning) + ", "
                + Figures.text(tuning.centsPerMm(zone.lengthMm()), 1) + " cents/mm";
    }

    /** Said where it is not the usual one, or has no say. */
    private static String temperament(Tuning tuning) {
        if (tuning.temperament().equals(EqualDivision.TWELVE)) {
            return "";
        }
        return " in " + tuning.temperament().word()
                + (tuning.scale().isOfTheTwelve() ? "" : " (which its cents and ratios do not follow)");
    }

    private static String shifted(Tuning tuning) {
        return (tuning.transpose() == 0 ? "" : ", transposed by " + tuning.transpose() + " semitones")
                + (tuning.trimCents() == 0 ? "" : ", trimmed by " + Figures.text(tuning.trimCents(), 1) + " cents");
    }

    /** Where a hand plays. */
    public static String zone(HandSetup hand) {
        if (hand.channel().kind() == SensorKind.PHOTORESISTOR && hand.scaledTravel()) {
            return "light from covered to open";
        }
        return (hand.scaledTravel() ? "nominal " : "")
                + Figures.text(hand.zone().nearMm(), 1) + " to "
                + Figures.text(hand.zone().farMm(), 1) + " mm";
    }

    /** Fit, worst note, and what warmer air does. */
    public static List<String> promises(Room room, Tuning tuning) {
        List<String> lines = new ArrayList<>();
        FitQuality fit = room.pitch().fit();
        if (fit != null) {
            lines.add("fit: " + fit.method() + " of " + fit.parameters() + " parameters through "
                    + fit.residuals().size() + " holds, residuals "
                    + Figures.text(fit.rmsMm(), 1) + " mm rms, worst "
                    + Figures.text(fit.worst().y(), 1) + " mm at "
                    + Figures.text(fit.worst().x(), 0) + " mm; a hold left out is foretold to "
                    + Figures.text(fit.leftOutMm(), 1) + " mm");
        }
        NoteBudget worst = NoteBudget.worst(NoteBudget.of(room.pitch(), tuning));
        lines.add("the worst note, " + worst.name() + ", is promised "
                + worst.budget().words());
        AirChange.of(room, tuning, AirChange.USUAL_DEGREES).ifPresent(change -> lines.add("air: " + change.words()));
        return lines;
    }
}
