package handspan.show.scene;

import handspan.instrument.sensor.Instrument;
import handspan.live.path.TargetStatus;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SendValue;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Sounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Where sound goes, and whether the patch hears. */
final class PatchScene {
    private static final List<SendValue> NEEDED = List.of(SendValue.PITCH, SendValue.LEVEL, SendValue.HAND);
    private static final List<String> UNITS = List.of(" (frequency in Hz)", " (gain, 0..1)", " (1 while a hand plays)");

    private PatchScene() {}

    static Page page(EveningView evening, Showing showing) {
        Sounding sounding = evening.sounding();
        List<Block> blocks = new ArrayList<>();
        if (!sounding.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, sounding.trouble()));
        }
        if (sounding.trying()) {
            blocks.add(new Block.Prompt("A4, swelling and dying away", "Listen: does the patch sound?"));
        }
        blocks.add(new Block.Fields(List.of(new Block.Field(
                Ask.TARGETS,
                "Sound goes to",
                targets(sounding),
                List.of(),
                "",
                "udp:HOST:PORT, tcp:HOST:PORT, tcp-slip:HOST:PORT or midi:DEVICE; several parted by commas"))));
        if (!sounding.targets().isEmpty()) {
            blocks.add(table(sounding.targets()));
        }
        boolean plays = sounding.setting().isPresent();
        List<Offer> offers = new ArrayList<>();
        if (sounding.trying()) {
            offers.add(Offer.next("Silence", "ESCAPE", Wish.Plain.SILENCE, "fades what sounds"));
        } else {
            offers.add(Offer.sound(
                            "Try the patch",
                            "ctrl T",
                            Wish.Plain.TRY_PATCH,
                            "sends A4 and a slow rise and fall of level, some seconds; monitors low first")
                    .unless(plays ? "it plays: the patch gets all that is played" : ""));
        }
        if (sounding.tried() || sounding.trying()) {
            offers.add(Offer.next("I hear it", "ctrl ENTER", new Wish.Heard(true), "marks this station as done"));
            offers.add(Offer.plain("I hear nothing", "ctrl N", new Wish.Heard(false), "says what to look at"));
        }
        blocks.add(new Block.Offers(offers));
        if (showing.patchHeard()) {
            blocks.add(new Block.Words(Tone.GOOD, "The patch hears."));
        } else if (sounding.tried() && !sounding.trying()) {
            blocks.add(new Block.Words(
                    Tone.LOOK,
                    "Not heard? Does the patch listen on that port, on that machine, and take the addresses below? Is its"
                            + " sound on? 'handspan hear 9000' prints what arrives on a port of this machine."));
        }
        blocks.add(new Block.Words(Tone.PLAIN, "The patch gets " + addresses(evening) + ", among others."));
        blocks.add(new Block.Words(
                Tone.QUIET,
                "Monitors low first. In the patch: no packet for 1.5 s means mute; it is the only cure for a program"
                        + " that dies in the middle of a note."));
        return new Page(Station.PATCH, blocks);
    }

    /** The lines that a patch can't do without, as this instrument sends them. */
    private static String addresses(EveningView evening) {
        String name = evening.arrival().instrument().map(Instrument::name).orElse("instrument");
        SendPlan plan =
                evening.keeping().profile().map(RoomProfile::send).orElseGet(() -> SendPlan.byDefault(name, List.of()));
        return plan.lines().stream()
                .filter(line -> line.on() && NEEDED.contains(line.value()))
                .map(line -> line.address() + UNITS.get(NEEDED.indexOf(line.value())))
                .collect(Collectors.joining(", "));
    }

    static String targets(Sounding sounding) {
        return sounding.wanted().stream().map(SendTarget::text).collect(Collectors.joining(", "));
    }

    private static Block.Table table(List<TargetStatus> targets) {
        List<Block.Row> rows = targets.stream()
                .map(status -> new Block.Row(
                        List.of(
                                status.target(),
                                Figures.count(status.sent()),
                                Figures.count(status.refused()),
                                Figures.count(status.dropped()),
                                status.trouble()),
                        Optional.empty(),
                        "refused: nobody listens there; over UDP no more can be known"))
                .toList();
        return new Block.Table("ways out", List.of("way out", "sent", "refused", "dropped", "to be seen to"), rows);
    }
}
