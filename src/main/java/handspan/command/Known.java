package handspan.command;

import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.LinkException;
import handspan.live.session.LinkFacts;
import handspan.profile.ProfileException;
import handspan.wiring.Heard;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.Recording;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An open source together with the instrument that it is.
 *
 * @param rig open, listening
 * @param instrument which channel is which hand, with the line shape
 */
record Known(Rig rig, Instrument instrument) implements AutoCloseable {
    /**
     * Opens a source and finds out what it is: told on the command line, or heard.
     *
     * @param askWhenUnsure whether an unsure proposal is refused
     */
    static Known open(SourceArguments arguments, Talk talk, boolean askWhenUnsure, @Nullable Recording recording)
            throws UsageException, LinkException, IOException, ProfileException {
        LinkTalk.announce(talk, arguments);
        Source source = arguments.source();
        Optional<Instrument> told = arguments.told();
        SourceOptions options = told.isPresent() ? arguments.options(false, told.get()) : arguments.options(false);
        LineShape shape = told.map(Instrument::shape).orElse(null);
        if (source.kind() == Source.Kind.TAKE) {
            // a recording is heard by a rig of its own, so that the one that is used misses nothing
            try (Rig listener = Rigs.open(source, options, shape, List.of(), null)) {
                Instrument instrument = finish(told, listener, arguments, talk, askWhenUnsure);
                Rig used = Rigs.open(source, options, instrument.shape(), List.of(), recording);
                return new Known(talk.log().following(used, source.text()), instrument);
            }
        }
        Rig rig = talk.log().following(Rigs.open(source, options, shape, List.of(), recording), source.text());
        try {
            return new Known(rig, finish(told, rig, arguments, talk, askWhenUnsure));
        } catch (UsageException | LinkException | RuntimeException e) {
            rig.close();
            throw e;
        }
    }

    /** Opens a source that is to be the instrument of a room. */
    static Known open(SourceArguments arguments, Instrument instrument, Talk talk, @Nullable Recording recording)
            throws UsageException, LinkException, IOException {
        LinkTalk.announce(talk, arguments);
        Source source = arguments.source();
        Rig opened = Rigs.open(source, arguments.options(false, instrument), instrument.shape(), List.of(), recording);
        Rig rig = talk.log().following(opened, source.text());
        try {
            return new Known(rig, finish(Optional.of(instrument), rig, arguments, talk, true));
        } catch (UsageException | LinkException | RuntimeException e) {
            rig.close();
            throw e;
        }
    }

    private static Instrument finish(
            Optional<Instrument> told, Rig rig, SourceArguments arguments, Talk talk, boolean askWhenUnsure)
            throws UsageException, LinkException {
        LinkTalk links = new LinkTalk(talk, arguments.source());
        Optional<Heard> heard = UsageException.reading(() -> Heard.on(rig, links::hear));
        if (heard.isEmpty()) {
            throw new LinkException(
                    LinkException.Kind.REFUSED,
                    "no line with a number came from '" + arguments.source().text()
                            + "': is the board's program running, and is " + arguments.baud(rig)
                            + " its baud rate ('--baud auto' finds it)?");
        }
        if (told.isPresent()) {
            Instrument instrument =
                    arguments.listed(linked(told.get().withShape(heard.get().shape()), rig));
            check(instrument.pitch(), heard.get().shape());
            ChannelSpec level = instrument.level();
            if (level != null) {
                check(level, heard.get().shape());
            }
            return instrument;
        }
        InstrumentFinder found = InstrumentFinder.proposed(
                        arguments.name(), arguments.baud(rig), arguments.referenceVolts, heard.get())
                .orElseThrow(() -> new UsageException("no channel found: name one with --pitch CHANNEL:KIND:UNIT"));
        found.remarks().forEach(talk::say);
        boolean unsure = heard.get().guesses().stream()
                .anyMatch(guess -> guess.nature() == LineShape.Nature.LIVE && !guess.sure());
        if (unsure && askWhenUnsure) {
            throw new UsageException(unsure(found.instrument(), arguments.source()));
        }
        return arguments.listed(linked(found.instrument(), rig));
    }

    /** What to type where the proposal is right, and how to find out. */
    private static String unsure(Instrument proposed, Source source) {
        ChannelSpec level = proposed.level();
        String typed = "--pitch " + LinesTalk.typed(proposed.pitch().text())
                + (level == null ? "" : " --level " + LinesTalk.typed(level.text()));
        return "it is not sure enough which number is which hand: say --pitch CHANNEL:KIND:UNIT and"
                + " --level CHANNEL:KIND:UNIT; if the proposal is right, add " + typed + " to the command; "
                + (source.kind() == Source.Kind.TAKE
                        ? "'handspan watch " + source.text() + "' shows the numbers"
                        : "'handspan watch " + source.text() + " --wave' finds out");
    }

    /** The instrument with the speed and the board that it was found at; those of no port tell nothing. */
    private static Instrument linked(Instrument instrument, Rig rig) {
        LinkFacts facts = rig.facts();
        return facts.equals(LinkFacts.NONE)
                ? instrument
                : instrument.at(facts.baud(), facts.identity() == null ? instrument.port() : facts.identity());
    }

    private static void check(ChannelSpec channel, LineShape shape) throws UsageException {
        if (shape.indexOf(channel.channel()) < 0) {
            throw new UsageException("channel '" + channel.channel() + "' is not in the lines (" + shape.words()
                    + "): name one that is");
        }
    }

    @Override
    public void close() {
        rig.close();
    }
}
