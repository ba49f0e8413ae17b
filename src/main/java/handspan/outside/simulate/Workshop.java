package handspan.outside.simulate;

import handspan.number.units.Nanos;
import handspan.outside.simulate.SimulatedBoard.Channel;
import java.util.List;
import java.util.Random;

/**
 * Puts the parts of one simulated instrument together. What belongs to the instrument is drawn from the instrument's
 * name, what belongs to the venue and the evening from the catalogue name: so one instrument can stand in two venues.
 */
final class Workshop {
    private static final double MAINS_HZ = 50;
    private static final double ECHO_SPACING_MM = 150;
    private static final double HEARD_01 = 0.4;

    private final CatalogueEntry entry;
    private final long seed;
    private final long startNanos;
    private final long partsSeed;
    private final long eveningSeed;
    private final double airCelsius;

    Workshop(CatalogueEntry entry, long seed, long startNanos) {
        this.entry = entry;
        this.seed = seed;
        this.startNanos = startNanos;
        partsSeed = Seeds.of(seed, entry.instrument());
        eveningSeed = Seeds.of(seed, entry.name());
        airCelsius = 20 + Seeds.between(Seeds.random(eveningSeed, "air"), -5, 5);
    }

    /** Time of flight for pitch, light for level, bare numbers. */
    SimulatedInstrument flightAndLight(TimeOfFlightSettings flight, LightRoom room) {
        return flightAndLight(50, new TimeOfFlightModel(flight, Seeds.of(eveningSeed, "pitch")), room);
    }

    /** The hall's instrument with a fault of its ranger or another line rate. */
    SimulatedInstrument hallWith(double linesPerSecond, SensorFaults faults, LightRoom room) {
        TimeOfFlightModel ranger = new TimeOfFlightModel(
                TimeOfFlightSettings.likeTheMeasuredHour(pitchErrors()), Seeds.of(eveningSeed, "pitch"));
        SensorModel pitch = new FaultySensor(ranger, faults, Seeds.of(eveningSeed, "faults"), startNanos);
        return flightAndLight(linesPerSecond, pitch, room);
    }

    /** The hall's instrument behind a USB serial chip with a latency timer. */
    SimulatedInstrument hallBehindTimer(double timerMs, LightRoom room) {
        TimeOfFlightModel ranger = new TimeOfFlightModel(
                TimeOfFlightSettings.likeTheMeasuredHour(pitchErrors()), Seeds.of(eveningSeed, "pitch"));
        BoardSettings board = BoardSettings.usual(rate(100), LineStyle.plain(","));
        return assemble(
                player(Stage.LEVEL_BY_LIGHT, HandSettings.USUAL), board.behindTimer(timerMs), ranger, light(room));
    }

    private SimulatedInstrument flightAndLight(double linesPerSecond, SensorModel pitch, LightRoom room) {
        SimulatedPlayer player = player(Stage.LEVEL_BY_LIGHT, HandSettings.USUAL);
        return assemble(player, BoardSettings.usual(rate(linesPerSecond), LineStyle.plain(",")), pitch, light(room));
    }

    /** Infrared for pitch, light for level, bare numbers. */
    SimulatedInstrument infraredAndLight(Stage pitchStage, LightRoom room) {
        SimulatedPlayer player = player(pitchStage, Stage.LEVEL_BY_LIGHT, HandSettings.USUAL);
        InfraredSettings part = InfraredSettings.seeded(Seeds.of(partsSeed, "pitch"));
        return assemble(
                player,
                BoardSettings.usual(rate(40), LineStyle.plain(",")),
                new InfraredModel(part, Seeds.of(eveningSeed, "pitch")),
                light(room));
    }

    /** A light cell for pitch and nothing else. */
    SimulatedInstrument lightAlone(LightRoom room) {
        SimulatedPlayer player = player(Stage.PITCH_BY_LIGHT, Stage.LEVEL_BY_LIGHT, HandSettings.USUAL);
        return assemble(player, BoardSettings.usual(rate(50), LineStyle.labelled("", "ldr: ")), light(room));
    }

    /** Echo times for both hands from two sensors that hear each other. */
    SimulatedInstrument twoEchoes() {
        SimulatedPlayer player = player(Stage.LEVEL_BY_DISTANCE, HandSettings.USUAL);
        EchoSettings left = EchoSettings.usual(airCelsius, pitchErrors());
        EchoSettings right = EchoSettings.usual(airCelsius, DistanceErrors.seeded(Seeds.of(partsSeed, "level")));
        Neighbour level = new Neighbour(player.hand(PlayerHand.LEVEL), ECHO_SPACING_MM, HEARD_01);
        Neighbour pitch = new Neighbour(player.hand(PlayerHand.PITCH), ECHO_SPACING_MM, HEARD_01);
        return assemble(
                player,
                BoardSettings.usual(rate(15), LineStyle.labelled(" ", "echo1:", "echo2:")),
                new EchoModel(left, Seeds.of(eveningSeed, "pitch"), level),
                new EchoModel(right, Seeds.of(eveningSeed, "level"), pitch));
    }

    /** Time of flight for both hands, labelled. */
    SimulatedInstrument twoFlights() {
        SimulatedPlayer player = player(Stage.LEVEL_BY_DISTANCE, HandSettings.USUAL);
        BoardSettings board = BoardSettings.usual(rate(30), LineStyle.labelled(" ", "D:", "L:"))
                .withBanner("two rangers", "ready");
        TimeOfFlightSettings level =
                TimeOfFlightSettings.likeTheMeasuredHour(DistanceErrors.seeded(Seeds.of(partsSeed, "level")));
        return assemble(
                player,
                board,
                new TimeOfFlightModel(
                        growing(TimeOfFlightSettings.likeTheMeasuredHour(pitchErrors())),
                        Seeds.of(eveningSeed, "pitch")),
                new TimeOfFlightModel(growing(level), Seeds.of(eveningSeed, "level")));
    }

    /** Echo time in microseconds and light, labelled. */
    SimulatedInstrument echoAndLight(LightRoom room) {
        SimulatedPlayer player = player(Stage.LEVEL_BY_LIGHT, HandSettings.USUAL);
        return assemble(
                player,
                BoardSettings.usual(rate(18), LineStyle.labelled(" ", "us:", "light:")),
                new EchoModel(EchoSettings.usual(airCelsius, pitchErrors()), Seeds.of(eveningSeed, "pitch")),
                light(room));
    }

    /** Whole centimetres and nothing else. */
    SimulatedInstrument echoInCentimetres() {
        SimulatedPlayer player = player(Stage.LEVEL_BY_LIGHT, HandSettings.USUAL);
        EchoSettings echo = EchoSettings.usual(airCelsius, pitchErrors()).withPrint(EchoPrint.WHOLE_CENTIMETRES, 0);
        return assemble(
                player,
                BoardSettings.usual(rate(16), LineStyle.withUnit("Distance: ", " cm")),
                new EchoModel(echo, Seeds.of(eveningSeed, "pitch")));
    }

    /** No error anywhere, not even in the hands. */
    SimulatedInstrument ideal() {
        SimulatedPlayer player = player(Stage.LEVEL_BY_DISTANCE, HandSettings.STILL);
        return assemble(
                player,
                BoardSettings.ideal(50, LineStyle.plain(",")),
                new TimeOfFlightModel(TimeOfFlightSettings.ideal(), eveningSeed),
                new TimeOfFlightModel(TimeOfFlightSettings.ideal(), eveningSeed));
    }

    /** Steady errors of the instrument's pitch sensor. */
    DistanceErrors pitchErrors() {
        return DistanceErrors.seeded(Seeds.of(partsSeed, "pitch"));
    }

    /** A room under lamps on the mains, whose frequency is never quite the nominal one. */
    LightRoom lampLight(double ambientLux, double ripple01) {
        double mainsHz = MAINS_HZ + Seeds.between(Seeds.random(eveningSeed, "mains"), -0.05, 0.05);
        return LightRoom.steady(ambientLux).withRipple(2 * mainsHz, ripple01);
    }

    private LightModel light(LightRoom room) {
        LightCell cell = LightCell.seeded(partsSeed, LightCell.Side.TO_SUPPLY);
        return new LightModel(cell, room, LightModel.USUAL_NOISE_COUNTS, Seeds.of(eveningSeed, "level"));
    }

    /** A time counted from power-up. */
    long after(double seconds) {
        return startNanos + Nanos.ofSeconds(seconds);
    }

    private SimulatedPlayer player(Stage levelStage, HandSettings hands) {
        return player(Stage.PITCH, levelStage, hands);
    }

    private SimulatedPlayer player(Stage pitchStage, Stage levelStage, HandSettings hands) {
        double aimMm = hands.equals(HandSettings.STILL) ? 0 : SimulatedPlayer.USUAL_AIM_MM;
        return new SimulatedPlayer(pitchStage, levelStage, hands, aimMm, Seeds.of(eveningSeed, "player"));
    }

    /** A board's clock is a ceramic resonator, good to some tenths of a percent. */
    private double rate(double nominalPerSecond) {
        Random random = Seeds.random(partsSeed, "board clock");
        return nominalPerSecond * (1 + Seeds.between(random, -0.003, 0.003));
    }

    private static TimeOfFlightSettings growing(TimeOfFlightSettings flight) {
        return flight.withNoise(flight.noiseMm(), 0.5, flight.driftRmsMm()).withMeasuringMs(33);
    }

    private SimulatedInstrument assemble(SimulatedPlayer player, BoardSettings board, SensorModel... models) {
        Channel pitch = new Channel(models[0], player.hand(PlayerHand.PITCH));
        List<Channel> channels = models.length == 1
                ? List.of(pitch)
                : List.of(pitch, new Channel(models[1], player.hand(PlayerHand.LEVEL)));
        SimulatedBoard printing = new SimulatedBoard(board, channels, Seeds.of(eveningSeed, "board"), startNanos);
        return new SimulatedInstrument(entry, seed, player, printing, airCelsius);
    }
}
