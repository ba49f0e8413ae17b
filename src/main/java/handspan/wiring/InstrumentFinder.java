package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.survey.ChannelGuess;
import handspan.outside.simulate.CatalogueEntry;
import handspan.outside.simulate.SimulatedInstruments;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which channel of a source is which hand: named on the command line, told by a simulation's catalogue, or proposed
 * from what was heard.
 *
 * @param instrument what was found
 * @param remarks what a player should know about how it was found
 */
public record InstrumentFinder(Instrument instrument, List<String> remarks) {
    /** Copies the remarks. */
    public InstrumentFinder {
        remarks = List.copyOf(remarks);
    }

    /**
     * The instrument of a simulation.
     *
     * @param name in the catalogue
     * @throws IllegalArgumentException when there is none
     */
    public static Instrument ofSimulation(String name) {
        CatalogueEntry entry = SimulatedInstruments.catalogue().stream()
                .filter(candidate -> candidate.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("simulation 'sim:" + name + "' is not known: choose one of "
                                + SimulatedInstruments.catalogue().stream()
                                        .map(CatalogueEntry::name)
                                        .reduce((a, b) -> a + ", " + b)
                                        .orElse("")));
        return named(
                entry.instrument(),
                Instrument.USUAL_BAUD,
                ChannelSpec.parse(entry.pitchSpec()),
                entry.levelSpec().isEmpty() ? null : ChannelSpec.parse(entry.levelSpec()),
                Instrument.USUAL_REFERENCE_VOLTS);
    }

    /** An instrument of revision 1 whose line shape is not known yet. */
    public static Instrument named(
            String name, int baud, ChannelSpec pitch, @Nullable ChannelSpec level, double referenceVolts) {
        return new Instrument(name, 1, baud, null, pitch, level, referenceVolts);
    }

    /**
     * The instrument that was probably heard: the first length or infrared is the pitch hand, light or a second length
     * the level hand.
     *
     * @param name to give it
     * @param heard what the source says of itself
     * @return empty when no number could be the pitch hand
     */
    public static Optional<InstrumentFinder> proposed(String name, int baud, double referenceVolts, Heard heard) {
        // what counts, keeps time or never changes is no hand
        List<ChannelGuess> live = heard.guesses().stream()
                .filter(guess -> guess.nature() == LineShape.Nature.LIVE)
                .toList();
        Optional<ChannelGuess> pitch = live.stream()
                .filter(guess -> guess.spec().kind().isLength() || guess.spec().kind() == SensorKind.INFRARED)
                .findFirst()
                .or(() -> live.stream()
                        .filter(guess -> guess.spec().kind() != SensorKind.UNSCALED)
                        .findFirst())
                .or(() -> live.stream().findFirst());
        if (pitch.isEmpty()) {
            return Optional.empty();
        }
        Optional<ChannelGuess> level = live.stream()
                .filter(guess -> !guess.equals(pitch.get()) && guess.spec().kind() != SensorKind.UNSCALED)
                .findFirst();
        List<String> remarks = new ArrayList<>();
        remarks.add(remark("pitch", pitch.get()));
        level.ifPresent(guess -> remarks.add(remark("level", guess)));
        Instrument instrument = named(
                        name,
                        baud,
                        pitch.get().spec(),
                        level.map(ChannelGuess::spec).orElse(null),
                        referenceVolts)
                .withShape(heard.shape());
        return Optional.of(new InstrumentFinder(instrument, remarks));
    }

    private static String remark(String hand, ChannelGuess guess) {
        String start = "channel " + guess.spec().channel() + " taken as " + hand + ", "
                + guess.spec().kind().word() + " in " + guess.spec().unit().word() + " (" + guess.evidence() + ")";
        return guess.sure() ? start : start + ": if it is not, say --" + hand + " CHANNEL:KIND:UNIT";
    }
}
