package handspan.show.scene;

import handspan.instrument.line.CommaRule;
import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.PortIdentity;
import handspan.instrument.survey.ChannelGuess;
import handspan.live.session.ActivityView;
import handspan.live.session.LinkState;
import handspan.live.session.PortInfo;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Arrival;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Taking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which instrument, what it sends, and which number is which hand. */
final class ArriveScene {
    private static final List<String> BAUDS = List.of("auto", "9600", "19200", "38400", "57600", "115200", "230400");
    private static final String NONE = "none";

    private ArriveScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        Arrival arrival = evening.arrival();
        if (!arrival.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, arrival.trouble()));
        }
        if (arrival.source().isEmpty() || evening.snapshot().isEmpty()) {
            choosing(blocks, arrival, evening.taking());
        } else if (evening.surveyed().isSomething()) {
            blocks.addAll(0, SurveyScene.blocks(evening));
        } else {
            opened(blocks, evening, arrival, evening.snapshot().get());
            Sights.readings(blocks, evening, showing);
        }
        return new Page(Station.ARRIVE, blocks);
    }

    private static void choosing(List<Block> blocks, Arrival arrival, Taking taking) {
        List<Block.Row> rows = new ArrayList<>();
        for (PortInfo port : arrival.ports()) {
            rows.add(new Block.Row(
                    List.of(
                            port.name(),
                            port.description(),
                            port.identity().map(PortIdentity::words).orElse("no USB device"),
                            port.canBeOpened() ? "" : port.remedy()),
                    Optional.of(new Wish.Open(port.name())),
                    "opens this port at the link speed below; the board starts anew by that"));
        }
        for (String line : Rigs.simulations()) {
            int gap = line.indexOf("  ");
            rows.add(new Block.Row(
                    List.of(line.substring(0, gap), line.substring(gap).strip(), "simulated", ""),
                    Optional.of(new Wish.Open(line.substring(0, gap))),
                    "a simulated instrument in its player's hands: no board is needed"));
        }
        rows.addAll(TakeScene.rows(taking));
        if (arrival.looked() && arrival.ports().isEmpty()) {
            blocks.add(new Block.Words(
                    Tone.LOOK,
                    "No serial port is there: plug the board in, with a cable that carries data, and look again."
                            + " Without a board, take a simulated instrument."));
        }
        blocks.add(new Block.Table("instruments", List.of("source", "what it is", "known by", "to be seen to"), rows));
        blocks.add(new Block.Fields(List.of(
                new Block.Field(
                        Ask.BAUD,
                        "Link speed",
                        baud(arrival.options()),
                        BAUDS,
                        "baud",
                        "as the board's program sets it, in baud; auto finds it by trying, in up to ten seconds"),
                new Block.Field(
                        Ask.SOURCE,
                        "Another source",
                        "",
                        List.of(),
                        "",
                        "a port by name, or take:FILE for a recording; Enter opens it"))));
        blocks.add(new Block.Offers(List.of(
                Offer.next("Look for ports again", "F5", Wish.Plain.LOOK_FOR_PORTS, "lists what is plugged in now"))));
        blocks.add(new Block.Words(Tone.QUIET, "Choose a row and press Enter, or click it twice."));
    }

    private static String baud(SourceOptions options) {
        return options.baud() == SourceOptions.AUTO ? "auto" : Integer.toString(options.baud());
    }

    private static void opened(List<Block> blocks, EveningView evening, Arrival arrival, Snapshot snapshot) {
        String source = arrival.source().map(Source::text).orElse("");
        if (snapshot.activity() instanceof ActivityView.FindingHands finding) {
            blocks.add(new Block.Prompt(
                    capital(finding.part().prompt()),
                    "some "
                            + Figures.text(
                                    finding.part().readySeconds()
                                            + finding.part().seconds(),
                                    0) + " s; the next comes by itself"));
        }
        Tone tone = Links.tone(evening);
        blocks.add(new Block.Words(tone, Links.words(snapshot, source)));
        blocks.addAll(TakeScene.blocks(evening));
        if (!snapshot.question().isEmpty()) {
            question(blocks, snapshot);
        }
        snapshot.shape().ifPresent(shape -> blocks.add(new Block.Words(Tone.PLAIN, capital(shape.words()))));
        if (snapshot.shape().isEmpty() && snapshot.question().isEmpty() && snapshot.link() == LinkState.UP) {
            blocks.add(new Block.Words(Tone.PLAIN, "Learning how the board writes its lines ..."));
        }
        if (!snapshot.text().remark().isEmpty()) {
            blocks.add(new Block.Words(
                    Tone.QUIET, "The board says: " + snapshot.text().remark()));
        }
        if (snapshot.activity() instanceof ActivityView.Watching watching) {
            numbers(blocks, snapshot, watching, arrival.instrument());
        }
        hands(blocks, arrival);
        boolean finding = snapshot.activity() instanceof ActivityView.FindingHands;
        blocks.add(new Block.Offers(List.of(
                Offer.next(
                                "On to the room",
                                "ctrl ENTER",
                                new Wish.Go(Station.ROOM),
                                "takes the holds of tonight's room")
                        .unless(arrival.instrument().isPresent() ? "" : "which number is which hand is not known yet"),
                Offer.plain(
                                "Find the hands by moving them",
                                "ctrl F",
                                Wish.Plain.FIND_HANDS,
                                "asks for no hand, the one, the other, 4 to 7 s each")
                        .unless(finding ? "it is under way" : ""),
                SurveyScene.offer(evening),
                TakeScene.recording(evening),
                Offer.plain("Close the instrument", "ctrl W", Wish.Plain.LEAVE, "lets go of the port"))));
    }

    private static void question(List<Block> blocks, Snapshot snapshot) {
        blocks.add(new Block.Words(Tone.LOOK, snapshot.question()));
        blocks.add(new Block.Offers(List.of(
                Offer.next(
                        "A comma is the decimal sign",
                        "ctrl 1",
                        new Wish.Comma(CommaRule.DECIMAL),
                        "23,4 is one number"),
                Offer.next(
                        "A comma parts numbers", "ctrl 2", new Wish.Comma(CommaRule.PARTS), "23,4 is two numbers"))));
    }

    private static void numbers(
            List<Block> blocks, Snapshot snapshot, ActivityView.Watching watching, Optional<Instrument> instrument) {
        List<Block.Row> rows = new ArrayList<>();
        for (int i = 0; i < watching.names().size() && i < watching.guesses().size(); i++) {
            double value = watching.values().get(i);
            ChannelGuess guess = watching.guesses().get(i);
            boolean live = guess.nature() == LineShape.Nature.LIVE;
            String probably = live
                    ? (guess.sure() ? "" : "perhaps ")
                            + guess.spec().kind().word() + " in "
                            + guess.spec().unit().word()
                    : guess.nature().words();
            rows.add(new Block.Row(
                    List.of(
                            watching.names().get(i),
                            Double.isNaN(value) ? "-" : plain(value),
                            probably,
                            hand(snapshot, instrument, i)),
                    Optional.empty(),
                    guess.evidence()));
        }
        blocks.add(new Block.Table("numbers of a line", List.of("number", "now", "what it probably is", "hand"), rows));
        blocks.add(new Block.Words(
                Tone.QUIET,
                Figures.text(watching.ratePerS(), 1) + " readings a second, intervals vary by "
                        + Figures.text(watching.jitterMs(), 1) + " ms"
                        + (snapshot.arrivals().words().isEmpty()
                                ? ""
                                : "; " + snapshot.arrivals().words())));
    }

    private static String hand(Snapshot snapshot, Optional<Instrument> instrument, int slot) {
        if (instrument.isEmpty() || snapshot.shape().isEmpty()) {
            return "";
        }
        LineShape shape = snapshot.shape().get();
        ChannelSpec level = instrument.get().level();
        if (shape.indexOf(instrument.get().pitch().channel()) == slot) {
            return "pitch";
        }
        return level != null && shape.indexOf(level.channel()) == slot ? "level" : "";
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Figures.text(value, 0) : Figures.text(value, 3);
    }

    private static void hands(List<Block> blocks, Arrival arrival) {
        if (arrival.instrument().isEmpty()) {
            return;
        }
        Instrument instrument = arrival.instrument().get();
        ChannelSpec level = instrument.level();
        String how = String.join("; ", arrival.remarks());
        blocks.add(new Block.Words(
                arrival.sure() ? Tone.GOOD : Tone.LOOK,
                arrival.sure()
                        ? capital(how)
                        : capital(how) + ". Not sure: find the hands by moving them, or say it below."));
        blocks.add(new Block.Fields(List.of(
                new Block.Field(
                        Ask.PITCH_HAND,
                        "Pitch hand",
                        instrument.pitch().text(),
                        List.of(),
                        "",
                        "CHANNEL:KIND:UNIT, for example 1:distance:mm; kinds are distance, echo, infrared,"
                                + " photoresistor, unscaled"),
                new Block.Field(
                        Ask.LEVEL_HAND,
                        "Level hand",
                        level == null ? NONE : level.text(),
                        List.of(),
                        "",
                        "likewise, for example 2:photoresistor:counts10; none for no level hand"))));
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
