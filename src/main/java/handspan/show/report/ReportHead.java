package handspan.show.report;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Unit;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomInWords;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.budget.Adviser;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.LatencyBudget;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.NoteChance;
import handspan.room.budget.Playable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The head of a report: what was measured, with what, when, and what came of it in a line each.
 *
 * @param profile of the room
 * @param tuning that is told of
 * @param feel of it
 * @param madeOn the day on which the report is written
 */
record ReportHead(RoomProfile profile, Tuning tuning, FeelBudget feel, LocalDate madeOn) {
    /** A change of level that is just heard, dB (textbooks, from memory). */
    private static final double HEARD_DB = 1;

    List<ReportPart> parts() {
        return List.of(
                new ReportPart.Facts(facts()),
                new ReportPart.Heading("What came of it"),
                new ReportPart.Facts(verdicts()));
    }

    private Room room() {
        return profile.room();
    }

    private List<ReportPart.Fact> facts() {
        Instrument instrument = room().instrument();
        HandSetup level = room().level();
        List<ReportPart.Fact> facts = new ArrayList<>();
        facts.add(new ReportPart.Fact("Instrument", instrument.name() + ", revision " + instrument.revision()));
        facts.add(new ReportPart.Fact(
                "Measured",
                ReportDate.withTime(room().calibratedAt()) + "; this report was written on " + ReportDate.of(madeOn)));
        facts.add(new ReportPart.Fact("Air", air(room().air())));
        facts.add(new ReportPart.Fact("Pitch hand", hand(room().pitch(), true)));
        facts.add(new ReportPart.Fact(
                "Level hand", level == null ? "none: the ceiling sounds while a hand plays" : hand(level, false)));
        facts.add(new ReportPart.Fact("Measured by", measuredBy()));
        facts.add(new ReportPart.Fact(
                "Tuning", RoomInWords.tuning(tuning, room().pitch().zone())));
        return facts;
    }

    private static String air(Air air) {
        return Figures.text(air.temperatureC(), 1) + " \u00b0C, relative humidity " + Figures.percent(air.humidity01())
                + (air.equals(Air.USUAL) ? " (the usual figures: no others were given)" : "");
    }

    private String hand(HandSetup hand, boolean pitch) {
        ChannelSpec channel = hand.channel();
        return "channel " + channel.channel() + ", " + sensor(channel) + "; " + RoomInWords.zone(hand)
                + (pitch ? "; " + Figures.text(room().ratePerS(), 1) + " readings a second" : "");
    }

    /** What a maker calls a sensor of a kind, with what its board prints. */
    private static String sensor(ChannelSpec channel) {
        String kind = switch (channel.kind()) {
            case DISTANCE -> "distance sensor";
            case ECHO -> "echo sensor";
            case INFRARED -> "infrared distance sensor";
            case PHOTORESISTOR -> "light sensor (photoresistor)";
            case UNSCALED -> "sensor without a scale";
        };
        return kind + (channel.unit() == Unit.NONE ? "" : " in " + unit(channel.unit()));
    }

    private static String unit(Unit unit) {
        return switch (unit) {
            case US -> "microseconds";
            case COUNTS10 -> "counts of 10 bits";
            case COUNTS12 -> "counts of 12 bits";
            case MM, CM, IN, V, NONE -> unit.word();
        };
    }

    private String measuredBy() {
        return (room().holds().isEmpty()
                        ? "holds that were not kept"
                        : holds(HandRole.PITCH) + " of the pitch hand"
                                + (room().level() == null ? "" : ", " + holds(HandRole.LEVEL) + " of the level hand"))
                + "; aim " + room().aim().words() + "; no person is named";
    }

    private String holds(HandRole role) {
        long count = room().holds().stream().filter(hold -> hold.hand() == role).count();
        return count + (count == 1 ? " hold" : " holds");
    }

    private List<ReportPart.Fact> verdicts() {
        return List.of(
                new ReportPart.Fact("Pitch sensor", pitch()),
                new ReportPart.Fact("Level sensor", level()),
                new ReportPart.Fact("This room", promise()),
                new ReportPart.Fact("This player", player()),
                new ReportPart.Fact("Total lag", lag()));
    }

    private String pitch() {
        String wobble = "a still hand wobbles " + Figures.text(feel.jitterCents(), 1) + " cents rms, "
                + Figures.text(feel.targetCents(), 1) + " are aimed at";
        return (feel.settings().reachesTarget() ? "steady enough: " : "less steady than wanted: ") + wobble;
    }

    private String level() {
        HandSetup hand = room().level();
        if (hand == null) {
            return "none";
        }
        LevelCurve curve = profile.level();
        double dbPerMm = (curve.ceilingDb() - curve.floorDb())
                / (1 - curve.knee01())
                / hand.zone().lengthMm();
        double wobbleDb = dbPerMm * hand.noiseMm();
        return (wobbleDb <= HEARD_DB ? "steady enough: " : "unsteady: ") + "one reading wobbles "
                + Figures.text(wobbleDb, 1) + " dB rms at most, about " + Figures.text(HEARD_DB, 0)
                + " dB is just heard";
    }

    private String promise() {
        NoteBudget worst = NoteBudget.worst(NoteBudget.of(room().pitch(), tuning));
        return "every note is promised within " + Figures.text(worst.budget().expandedCents(), 0)
                + " cents (95 %); the worst is " + worst.name() + ", mostly for "
                + worst.budget().largest().name()
                + (worst.budget().largest().assumed() ? " (assumed)" : "");
    }

    private String player() {
        Adviser adviser = Adviser.of(room(), room().aim());
        Playable playable = adviser.playable(tuning);
        return (adviser.holds(playable) ? "this tuning fits: " : "this tuning asks too much: ") + playable.worstName()
                + ", the worst note, is missed by "
                + NoteChance.percent(playable.worst().miss01()) + " of reaches, up to "
                + Figures.percent(adviser.mostMiss01()) + " will do";
    }

    private String lag() {
        LatencyBudget latency = LatencyBudget.of(room(), feel);
        return Figures.text(latency.totalMs(), 0)
                + " ms from hand to message, as far as is known; small steps of a still hand take "
                + Figures.text(feel.settings().stillLagMs(), 0) + " ms more";
    }
}
