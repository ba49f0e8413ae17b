package handspan.music.send;

import java.util.ArrayList;
import java.util.List;

/**
 * What an instrument sends and where to.
 *
 * @param lines one message each, in the order of the bundle
 * @param targets every one gets every frame
 * @param packing how Open Sound Control messages travel
 * @param midi how frames become MIDI
 */
public record SendPlan(List<SendLine> lines, List<SendTarget> targets, Packing packing, MidiForm midi) {
    /** Copies both lists. */
    public SendPlan {
        lines = List.copyOf(lines);
        targets = List.copyOf(targets);
    }

    /** In bundles, to be acted on at once. */
    public SendPlan(List<SendLine> lines, List<SendTarget> targets) {
        this(lines, targets, Packing.USUAL, MidiForm.USUAL);
    }

    /** Every value at its default address. */
    public static SendPlan byDefault(String instrumentName, List<SendTarget> targets) {
        List<SendLine> lines = new ArrayList<>();
        for (SendValue value : SendValue.usual()) {
            lines.add(SendLine.byDefault(value, instrumentName));
        }
        return new SendPlan(lines, targets);
    }

    /** The channels whose values are sent, each once. */
    public List<String> channels() {
        return lines.stream()
                .filter(line -> line.on() && !line.channel().isEmpty())
                .map(SendLine::channel)
                .distinct()
                .toList();
    }

    /** The same lines to other targets. */
    public SendPlan to(List<SendTarget> otherTargets) {
        return new SendPlan(lines, otherTargets, packing, midi);
    }

    /** Other lines to the same targets. */
    public SendPlan of(List<SendLine> otherLines) {
        return new SendPlan(otherLines, targets, packing, midi);
    }

    /** The same under another instrument's name: addresses below {@code /NAME/} move, others stay. */
    public SendPlan renamed(String instrumentName, String otherName) {
        String before = "/" + OscAddress.part(instrumentName) + "/";
        String after = "/" + OscAddress.part(otherName) + "/";
        return of(lines.stream()
                .map(line -> line.address().startsWith(before)
                        ? line.at(after + line.address().substring(before.length()))
                        : line)
                .toList());
    }

    /** The same, packed otherwise. */
    public SendPlan with(Packing otherPacking) {
        return new SendPlan(lines, targets, otherPacking, midi);
    }

    /** The same with other MIDI. */
    public SendPlan with(MidiForm otherMidi) {
        return new SendPlan(lines, targets, packing, otherMidi);
    }
}
