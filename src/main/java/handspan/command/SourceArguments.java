package handspan.command;

import handspan.instrument.line.CommaRule;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.NoReadings;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.ProfilePlaces;
import handspan.wiring.Rig;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The source on the command line, and all that tells what its numbers are. */
abstract class SourceArguments {
    static final String SOURCE = "a serial port, take:FILE or sim:NAME (sims: hall attic echo echo-cm two-flight noisy"
            + " still infrared light-only; with a fault: fold flicker drift sleeve clutter blackout bursts"
            + " crosstalk)";

    @Option(
            names = "--baud",
            paramLabel = "N|auto",
            converter = Baud.class,
            description = "link speed (default: the room's own, else 115200); auto finds it by trying")
    @Nullable
    Integer baudNamed;

    @Option(
            names = "--comma",
            paramLabel = "RULE",
            description = "what a comma between digits is, where the lines don't tell: decimal (23,4 is one number) or"
                    + " parts (it is two)",
            converter = CommaWord.class)
    CommaRule comma = CommaRule.ASK;

    @Option(
            names = "--rate",
            paramLabel = "PER_SECOND",
            description = "lines a second of a recording that has no times")
    @Nullable
    Double ratePerS;

    @Option(
            names = "--pitch",
            paramLabel = "CHANNEL:KIND[:UNIT]",
            description =
                    "which number is the pitch hand; KIND distance, echo, infrared, photoresistor, unscaled; UNIT mm cm"
                            + " in us counts10 counts12 V")
    @Nullable
    String pitch;

    @Option(names = "--level", paramLabel = "CHANNEL:KIND[:UNIT]", description = "which number is the level hand")
    @Nullable
    String level;

    @Option(
            names = "--no-reading",
            paramLabel = "CHANNEL=VALUE[,VALUE]",
            description =
                    "numbers by which a channel says that it sees nothing, besides the usual ones; may be repeated")
    Map<String, String> noReading = Map.of();

    @Option(
            names = "--reference-volts",
            paramLabel = "V",
            defaultValue = "5",
            description = "full scale of the board's converter (${DEFAULT-VALUE} V)")
    double referenceVolts;

    @Option(
            names = "--temperature",
            paramLabel = "C",
            description = "air temperature, degrees Celsius, for echo sensors (default: the room's own, else 20)")
    @Nullable
    Double temperatureC;

    @Option(
            names = "--humidity",
            paramLabel = "PERCENT",
            description = "relative humidity, for echo sensors (default: the room's own, else 50)")
    @Nullable
    Double humidityPercent;

    @Option(names = "--instrument", paramLabel = "FILE", description = "the same in a JSON file")
    @Nullable
    Path instrumentFile;

    @Option(
            names = "--instrument-name",
            paramLabel = "NAME",
            description = "what the instrument is called, also in the addresses that are sent")
    @Nullable
    String instrumentName;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "of a simulation (${DEFAULT-VALUE})")
    long seed;

    @Option(
            names = "--fast",
            description = "run a recording or simulation as fast as the machine can, not by the clock")
    boolean fast;

    @Option(
            names = "--begin",
            paramLabel = "S",
            defaultValue = "0",
            converter = Begin.class,
            description = "where a recording begins, seconds from its start (${DEFAULT-VALUE})")
    double beginS;

    /** The source as it is written. */
    abstract String written();

    Source source() {
        return Source.parse(written());
    }

    /** Reads a place in a recording. */
    static final class Begin implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            try {
                return SourceOptions.USUAL.from(Double.parseDouble(text)).beginS();
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(
                        "'" + text + "' is no place in a recording (seconds from its start, 0 and more)");
            }
        }
    }

    /** Reads a link speed as it is written. */
    static final class Baud implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            if (text.equals("auto")) {
                return SourceOptions.AUTO;
            }
            try {
                int baud = Integer.parseInt(text);
                if (baud >= 300 && baud <= 4_000_000) {
                    return baud;
                }
            } catch (NumberFormatException e) {
                throw new TypeConversionException("'" + text + "' is no link speed (300..4000000, or auto)");
            }
            throw new TypeConversionException("link speed " + text + " baud (300..4000000, or auto)");
        }
    }

    /** The link speed; {@link SourceOptions#AUTO} where it has to be found. */
    int baud() {
        return baudNamed == null ? Instrument.USUAL_BAUD : baudNamed;
    }

    /** The link speed once the source is open. */
    int baud(Rig rig) {
        return rig.facts().baud() > 0
                ? rig.facts().baud()
                : baud() == SourceOptions.AUTO ? Instrument.USUAL_BAUD : baud();
    }

    /** How to open what should be a known instrument: at its own speed unless another is named, by its own board. */
    SourceOptions options(boolean takesByTheClock, Instrument instrument) {
        return options(source(), takesByTheClock, instrument);
    }

    /** The same for one of several sources. */
    SourceOptions options(Source from, boolean takesByTheClock, Instrument instrument) {
        SourceOptions options = options(from, takesByTheClock).expecting(instrument.port());
        return baudNamed == null ? options.at(instrument.baud()) : options;
    }

    /** How to open it; recordings run fast except where they are played. */
    SourceOptions options(boolean takesByTheClock) {
        return options(source(), takesByTheClock);
    }

    private SourceOptions options(Source from, boolean takesByTheClock) {
        boolean take = from.kind() == Source.Kind.TAKE;
        boolean realTime = !fast && (!take || takesByTheClock);
        OptionalDouble rate = ratePerS == null ? OptionalDouble.empty() : OptionalDouble.of(ratePerS);
        return new SourceOptions(baud(), rate, seed, realTime).with(comma).from(beginS);
    }

    /** The air as far as the command line tells, else the usual one. */
    Air air() throws UsageException {
        return air(Air.USUAL);
    }

    /** The air as far as the command line tells, else as it was known before. */
    Air air(Air before) throws UsageException {
        Double celsius = temperatureC;
        Double percent = humidityPercent;
        return UsageException.reading(() -> new Air(
                celsius == null ? before.temperatureC() : celsius,
                percent == null ? before.humidity01() : percent / 100));
    }

    /**
     * The instrument as far as the command line, a file or a simulation's catalogue tells; empty when it has to be
     * heard.
     */
    Optional<Instrument> told() throws UsageException, ProfileException {
        if (beginS > 0 && source().kind() != Source.Kind.TAKE) {
            throw new UsageException("--begin " + Figures.shortest(beginS) + " with " + written()
                    + ": only a recording begins anywhere, take:FILE");
        }
        Path file = instrumentFile;
        if (file != null) {
            return Optional.of(new ProfileFolder(ProfilePlaces.folder(null)).loadInstrument(file));
        }
        String pitchText = pitch;
        if (pitchText != null) {
            String levelText = level;
            return Optional.of(UsageException.reading(() -> InstrumentFinder.named(
                    name(),
                    baud() == SourceOptions.AUTO ? Instrument.USUAL_BAUD : baud(),
                    ChannelSpec.parse(pitchText),
                    levelText == null ? null : ChannelSpec.parse(levelText),
                    referenceVolts)));
        }
        if (level != null) {
            throw new UsageException("--level without --pitch: name both, or neither");
        }
        if (source().kind() == Source.Kind.SIMULATION) {
            return Optional.of(UsageException.reading(() -> InstrumentFinder.ofSimulation(source().name())));
        }
        return Optional.empty();
    }

    /** An instrument with the numbers for no reading that the command line names. */
    Instrument listed(Instrument instrument) throws UsageException {
        Instrument listed = instrument;
        for (Map.Entry<String, String> named : noReading.entrySet()) {
            List<Double> values = new ArrayList<>();
            for (String value : named.getValue().split(",", -1)) {
                values.add(UsageException.reading(() -> number(named.getKey(), value)));
            }
            NoReadings numbers = UsageException.reading(() -> new NoReadings(values));
            Instrument before = listed;
            listed = UsageException.reading(() -> before.withNoReadings(named.getKey(), numbers));
        }
        return listed;
    }

    private static double number(String channel, String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "--no-reading " + channel + "=" + text + " (numbers as the board prints them, parted by commas)",
                    e);
        }
    }

    /** A name for an instrument that has none of its own. */
    String name() {
        return instrumentName == null ? Instrument.USUAL_NAME : instrumentName;
    }
}
