package handspan.profile;

import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomComparison.Difference;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What two rooms, or two versions of one, should sound like: tunings, level curve, what is sent and where to. */
final class SoundComparison {
    private SoundComparison() {}

    /** What differs, from the first to the second. */
    static List<Difference> of(RoomProfile one, RoomProfile other) {
        List<Difference> all = new ArrayList<>();
        tunings(one, other, all);
        if (!one.level().equals(other.level())) {
            all.add(new Difference(
                    "level curve",
                    "from " + Figures.text(one.level().floorDb(), 1) + " to "
                            + Figures.text(one.level().ceilingDb(), 1) + " dB, then from "
                            + Figures.text(other.level().floorDb(), 1) + " to "
                            + Figures.text(other.level().ceilingDb(), 1) + " dB"));
        }
        if (!one.send().targets().equals(other.send().targets())) {
            all.add(new Difference("sends", targets(one) + ", then " + targets(other)));
        }
        List<String> changed = changedLines(one.send(), other.send());
        if (!changed.isEmpty()) {
            all.add(new Difference("what is sent", "not the same: " + String.join(", ", changed)));
        }
        return all;
    }

    private static void tunings(RoomProfile one, RoomProfile other, List<Difference> all) {
        List<String> names = one.tunings().stream().map(Tuning::name).toList();
        List<String> otherNames = other.tunings().stream().map(Tuning::name).toList();
        for (Tuning tuning : one.tunings()) {
            if (!otherNames.contains(tuning.name())) {
                all.add(new Difference("tuning '" + tuning.name() + "'", "is gone"));
            } else if (!other.tuning(tuning.name()).equals(tuning)) {
                all.add(new Difference(
                        "tuning '" + tuning.name() + "'",
                        words(tuning) + ", then " + words(other.tuning(tuning.name()))));
            }
        }
        for (Tuning tuning : other.tunings()) {
            if (!names.contains(tuning.name())) {
                all.add(new Difference("tuning '" + tuning.name() + "'", "is new: " + words(tuning)));
            }
        }
        if (!names.get(0).equals(otherNames.get(0))) {
            all.add(new Difference("first tuning", "'" + names.get(0) + "', then '" + otherNames.get(0) + "'"));
        }
    }

    /** What differs of a plan besides its targets: lines by their names, then how they travel. */
    private static List<String> changedLines(SendPlan one, SendPlan other) {
        Set<String> names = new LinkedHashSet<>();
        one.lines().stream()
                .filter(line -> !other.lines().contains(line))
                .map(SendLine::name)
                .forEach(names::add);
        other.lines().stream()
                .filter(line -> !one.lines().contains(line))
                .map(SendLine::name)
                .forEach(names::add);
        if (names.isEmpty() && !one.lines().equals(other.lines())) {
            names.add("the order of lines");
        }
        if (!one.packing().equals(other.packing())) {
            names.add("bundles or their time");
        }
        if (!one.midi().equals(other.midi())) {
            names.add("the form of MIDI");
        }
        return List.copyOf(names);
    }

    private static String targets(RoomProfile profile) {
        return profile.send().targets().isEmpty()
                ? "to nobody"
                : "to "
                        + String.join(
                                ", ",
                                profile.send().targets().stream()
                                        .map(target -> target.text())
                                        .toList());
    }

    private static String words(Tuning tuning) {
        return tuning.lowName() + " to " + tuning.highName() + " "
                + tuning.scale().name() + " on "
                + tuning.tonic().name() + ", " + tuning.snapping().words() + ", transposed by " + tuning.transpose()
                + ", trimmed by " + Figures.text(tuning.trimCents(), 1);
    }
}
