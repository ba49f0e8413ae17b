package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.TargetStatus;
import handspan.music.send.MidiForm;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.Sparing;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.wiring.TryRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes what a room sends and where to, and lets one hear whether it arrives. */
@Command(
        name = "send",
        description = "shows or changes what a room sends, and where to",
        footer = {
            "",
            "TARGET is udp:HOST:PORT, udp-broadcast:HOST:PORT, udp-multicast:GROUP:PORT, tcp:HOST:PORT (the",
            "length before each packet), tcp-slip:HOST:PORT or midi:DEVICE.",
            "LINE is a value or an address. Values: pitch (Hz), note (key, cents), key (with its fraction),",
            "cents, degree (degree, octave), level (gain), db, hand, place (pitch, level), pitch-place,",
            "level-place, state, raw:CHANNEL, physical:CHANNEL.",
            "For a patch that wants level as a whole number 0..127:",
            "  --types level=i --scale level=0..0.5,0..127 --clip level",
            "Caution for --try: it sounds. Monitors low first; the level ceiling is kept. This is no safety",
            "device."
        })
final class SendVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Mixin
    LineArguments lines = new LineArguments();

    @Mixin
    PackingArguments packing = new PackingArguments();

    @Option(names = "--add", paramLabel = "TARGET", description = "send there too")
    List<String> add = List.of();

    @Option(names = "--remove", paramLabel = "TARGET", description = "send there no more")
    List<String> remove = List.of();

    @Option(
            names = "--try",
            description = "is the patch hearing? sends A4 with a slow rise and fall of level, then silence; needs no"
                    + " instrument")
    boolean trial;

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        SendPlan after = UsageException.reading(() -> changed(profile));
        boolean changed = !after.equals(profile.send());
        if (changed) {
            room.folder().save(profile.with(after));
        }
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("saved", changed);
        show(talk, after, result);
        int exit = trial ? sound(talk, profile, after, result) : Exit.DONE;
        talk.object(result);
        return exit;
    }

    private SendPlan changed(RoomProfile profile) {
        SendPlan before = profile.send();
        List<SendTarget> targets = new ArrayList<>(before.targets());
        for (String text : remove) {
            if (!targets.remove(SendTarget.parse(text))) {
                throw new IllegalArgumentException("target '" + text + "' is not in the room (it has "
                        + (targets.isEmpty() ? "none" : String.join(", ", texts(before))) + ")");
            }
        }
        for (String text : add) {
            SendTarget target = SendTarget.parse(text);
            if (!targets.contains(target)) {
                targets.add(target);
            }
        }
        String instrument = profile.room().instrument().name();
        return packing.changed(
                before.of(lines.changed(before.lines(), instrument)).to(targets));
    }

    private static List<String> texts(SendPlan plan) {
        return plan.targets().stream().map(SendTarget::text).toList();
    }

    private static void show(Talk talk, SendPlan plan, ObjectNode result) {
        ArrayNode targets = result.putArray("targets");
        plan.targets().forEach(target -> targets.add(target.text()));
        result.put("bundled", plan.packing().bundled());
        if (plan.packing().isTimed()) {
            result.put("latencyMs", plan.packing().latencyMs());
        }
        MidiForm midi = plan.midi();
        result.putObject("midi")
                .put("channel", midi.channel())
                .put("bendSemitones", midi.bendSemitones())
                .put("loudness", midi.loudness().word());
        talk.say("to " + (plan.targets().isEmpty() ? "nobody" : String.join(", ", texts(plan))));
        if (!plan.packing().bundled()) {
            talk.say("each message in a packet of its own");
        }
        if (plan.packing().isTimed()) {
            talk.say("to be acted on " + Figures.shortest(plan.packing().latencyMs())
                    + " ms after each frame, by the clock of this machine (network time on both)");
        }
        if (plan.targets().stream().anyMatch(target -> target.text().startsWith("midi:"))) {
            talk.say("MIDI on channel " + midi.channel() + ", bend range " + midi.bendSemitones()
                    + " semitones, level as " + midi.loudness().word());
        }
        ArrayNode nodes = result.putArray("lines");
        StringBuilder beyond = new StringBuilder();
        for (SendLine line : plan.lines()) {
            nodes.add(node(line));
            talk.say(words(line));
            beyond.append(line.on() ? line.typesBeyondCore() : "");
        }
        if (!beyond.isEmpty()) {
            talk.warn(
                    "types h, d and T/F are not core Open Sound Control 1.0 (i f s b): see that the patch knows them");
        }
    }

    private static ObjectNode node(SendLine line) {
        ObjectNode node = Talk.node();
        node.put("value", line.value().word());
        if (!line.channel().isEmpty()) {
            node.put("channel", line.channel());
        }
        node.put("address", line.address());
        node.put("types", line.types());
        if (!line.scaling().equals(Scaling.NONE)) {
            Scaling by = line.scaling();
            node.putArray("from").add(by.fromLow()).add(by.fromHigh());
            node.putArray("to").add(by.toLow()).add(by.toHigh());
            node.put("clip", by.clip());
        }
        if (!line.sparing().equals(Sparing.NONE)) {
            node.put("onChange", line.sparing().onChange());
            node.put("mostPerS", line.sparing().mostPerS());
            node.put("deadBand", line.sparing().deadBand());
        }
        node.put("on", line.on());
        return node;
    }

    private static String words(SendLine line) {
        StringBuilder words = new StringBuilder(
                String.format(Locale.ROOT, "  %-11s %-3s %s", line.name(), line.types(), line.address()));
        if (!line.scaling().equals(Scaling.NONE)) {
            Scaling by = line.scaling();
            words.append("  ").append(range(by.fromLow(), by.fromHigh())).append(" as ");
            words.append(range(by.toLow(), by.toHigh())).append(by.clip() ? ", clipped" : "");
        }
        Sparing sparing = line.sparing();
        if (sparing.onChange()) {
            words.append("  on change");
            words.append(sparing.deadBand() > 0 ? " of more than " + Figures.shortest(sparing.deadBand()) : "");
        }
        if (sparing.mostPerS() > 0) {
            words.append("  at most ")
                    .append(Figures.shortest(sparing.mostPerS()))
                    .append(" a second");
        }
        return words.append(line.on() ? "" : "  (off)").toString();
    }

    private static String range(double low, double high) {
        return Figures.shortest(low) + ".." + Figures.shortest(high);
    }

    private static int sound(Talk talk, RoomProfile profile, SendPlan plan, ObjectNode result) throws UsageException {
        if (plan.targets().isEmpty()) {
            throw new UsageException(
                    "nobody to try: name a target, handspan send --room NAME --add udp:HOST:PORT --try");
        }
        talk.say("now: A4 at "
                + Figures.text(profile.tunings().get(0).reference().a4Hz(), 1)
                + " Hz, swelling to " + Figures.text(profile.level().ceilingDb(), 0)
                + " dB and dying away, six seconds; then silence. Monitors low first.");
        try (TryRun run = TryRun.open(profile, plan);
                AtExit atExit = AtExit.run(run::close)) {
            run.play();
            List<TargetStatus> statuses = run.targets().status();
            result.set("tried", JsonViews.targets(statuses));
            boolean trouble = false;
            for (TargetStatus status : statuses) {
                talk.say("  " + status.target() + ": " + Figures.count(status.sent()) + " sent"
                        + (status.trouble().isEmpty() ? "" : ", but " + status.trouble()));
                trouble |= !status.trouble().isEmpty();
            }
            talk.say(
                    "Did it sound? If not: see that the patch listens on that port and to these addresses; handspan hear"
                            + " shows what would arrive there.");
            return trouble ? Exit.INSTRUMENT : Exit.DONE;
        }
    }
}
