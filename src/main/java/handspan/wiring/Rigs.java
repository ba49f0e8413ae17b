package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.live.path.FrameTarget;
import handspan.live.session.Engine;
import handspan.live.session.Event;
import handspan.live.session.Link;
import handspan.live.session.LinkException;
import handspan.live.session.LinkOpener;
import handspan.live.session.PortInfo;
import handspan.live.session.Replay;
import handspan.live.session.Session;
import handspan.number.units.Nanos;
import handspan.outside.midi.MidiOutputs;
import handspan.outside.osc.WallTime;
import handspan.outside.serial.SerialOpener;
import handspan.outside.serial.SerialPorts;
import handspan.outside.simulate.SimulatedInstruments;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Wires sources to engines. The one place that knows the clock. */
public final class Rigs {
    /** The monotonic clock of this program, ns. */
    public static final LongSupplier CLOCK = System::nanoTime;

    /** The time of day that goes with {@link #CLOCK}; follows the system when its clock is put right. */
    public static final WallTime WALL = timeNanos -> Instant.now().plusNanos(timeNanos - System.nanoTime());

    private Rigs() {}

    /** The moment as ISO 8601 text, to the second. */
    public static String dateAndTime() {
        return Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    }

    /**
     * Opens a rig.
     *
     * @param source where readings come from
     * @param options how
     * @param shape the line shape where it is known; null to learn it
     * @param targets where frames go; owned by the caller
     * @param recording records what comes; null for none; owned by the caller
     * @throws LinkException when a port can't be opened
     * @throws IOException when a recording can't be read
     * @throws IllegalArgumentException when there is no such simulation
     */
    public static Rig open(
            Source source,
            SourceOptions options,
            @Nullable LineShape shape,
            List<FrameTarget> targets,
            @Nullable Recording recording)
            throws LinkException, IOException {
        RecordingSocket socket = new RecordingSocket();
        if (recording != null) {
            socket.plug(recording);
        }
        return openWith(source, options, shape, targets, socket);
    }

    /**
     * Opens a rig whose recording can be plugged in and out while it runs.
     *
     * @param socket for recordings; owned by the caller, and so are they
     */
    public static Rig openWith(
            Source source,
            SourceOptions options,
            @Nullable LineShape shape,
            List<FrameTarget> targets,
            RecordingSocket socket)
            throws LinkException, IOException {
        // recordings and simulations begin a second into their own time, so that no time is 0
        long startNanos = options.realTime() ? CLOCK.getAsLong() : Nanos.PER_SECOND;
        Simulation simulation = source.kind() == Source.Kind.SIMULATION
                ? new Simulation(source.name(), options.seed(), startNanos)
                : null;
        Consumer<Event> listener = event -> {
            if (simulation != null) {
                simulation.onEvent(event);
            }
            socket.onEvent(event);
        };
        Engine engine =
                new Engine(new Engine.Plugs(shape, options.comma(), targets, socket.tap(), listener), startNanos);
        if (source.kind() == Source.Kind.PORT) {
            LinkOpener opener = new SerialOpener(source.name(), options.baud(), options.board());
            return new LiveRig(Session.start(engine, opener, CLOCK), null, null, CLOCK);
        }
        if (simulation != null) {
            return options.realTime()
                    ? new LiveRig(Session.start(engine, paced(source, simulation), CLOCK), simulation, null, CLOCK)
                    : new ReplayRig(engine, simulation, simulation, null, startNanos);
        }
        if (options.realTime()) {
            Reel reel = new Reel(source, options, CLOCK);
            return new LiveRig(Session.start(engine, reel, CLOCK), null, reel, CLOCK);
        }
        TakeSource take = new TakeSource(Path.of(source.name()), options.ratePerS(), startNanos, options.beginMicros());
        return new ReplayRig(engine, take, null, take, startNanos);
    }

    private static LinkOpener paced(Source source, Replay.TimedBytes bytes) {
        return new LinkOpener() {
            @Override
            public Link open() {
                return new PacedLink(bytes, CLOCK);
            }

            @Override
            public String name() {
                return source.text();
            }
        };
    }

    /**
     * The serial ports of this machine.
     *
     * @param tryOpening whether to open each for a moment to see if it can be; boards start anew when that is done
     */
    public static List<PortInfo> ports(boolean tryOpening) {
        return SerialPorts.list(tryOpening);
    }

    /** The MIDI outputs of this machine. */
    public static List<MidiOutput> midiOutputs() {
        return MidiOutputs.list().stream()
                .map(output -> new MidiOutput(output.name(), output.description(), output.vendor()))
                .toList();
    }

    /** Names and descriptions of the simulated instruments, one each. */
    public static List<String> simulations() {
        return SimulatedInstruments.catalogue().stream()
                .map(entry -> "sim:" + entry.name() + "  " + entry.description())
                .toList();
    }
}
