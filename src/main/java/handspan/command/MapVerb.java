package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Sensor;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what sounds where. */
@Command(
        name = "map",
        description =
                "says what sounds where: for distances or raw readings of either hand; with neither, where the notes lie")
final class MapVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--at", arity = "1..*", paramLabel = "MM", description = "distances of the pitch hand")
    List<Double> at = List.of();

    @Option(names = "--raw", arity = "1..*", paramLabel = "VALUE", description = "raw readings of the pitch hand")
    List<Double> raw = List.of();

    @Option(names = "--level-at", arity = "1..*", paramLabel = "MM", description = "distances of the level hand")
    List<Double> levelAt = List.of();

    @Option(names = "--level-raw", arity = "1..*", paramLabel = "VALUE", description = "raw readings of the level hand")
    List<Double> levelRaw = List.of();

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("tuning", tuning.name());
        ArrayNode points = result.putArray("points");
        for (double mm : pitchDistances(profile.room(), tuning)) {
            points.add(pitchPoint(talk, profile, tuning, mm));
        }
        for (double mm : levelDistances(profile.room())) {
            points.add(levelPoint(talk, profile, mm));
        }
        talk.object(result);
        return Exit.DONE;
    }

    private List<Double> pitchDistances(Room measured, Tuning tuning) throws UsageException {
        List<Double> distances = new ArrayList<>(at);
        for (double value : raw) {
            distances.add(fromRaw(measured, measured.pitch(), value));
        }
        if (distances.isEmpty() && levelAt.isEmpty() && levelRaw.isEmpty()) {
            ScaleLadder ladder = tuning.ladder();
            for (int note = 0; note < ladder.size(); note++) {
                distances.add(measured.pitch().zone().mm(tuning.curve().place01(ladder.key(note))));
            }
        }
        return distances;
    }

    private List<Double> levelDistances(Room measured) throws UsageException {
        List<Double> distances = new ArrayList<>(levelAt);
        HandSetup level = measured.level();
        if (level == null) {
            if (!levelAt.isEmpty() || !levelRaw.isEmpty()) {
                throw new UsageException(
                        "room '" + measured.name() + "' has no level hand: leave --level-at and --level-raw out");
            }
            return distances;
        }
        for (double value : levelRaw) {
            distances.add(fromRaw(measured, level, value));
        }
        return distances;
    }

    private static double fromRaw(Room measured, HandSetup hand, double value) throws UsageException {
        Sensor sensor = measured.sensor(hand);
        if (!sensor.hasReading(value)) {
            throw new UsageException("raw value " + value + " is no reading of channel "
                    + hand.channel().text() + " but what it prints when it sees nothing");
        }
        return hand.response().mm(sensor.physical(value));
    }

    private static ObjectNode pitchPoint(Talk talk, RoomProfile profile, Tuning tuning, double mm) {
        HandSetup hand = profile.room().pitch();
        double place01 = hand.zone().place01(mm);
        ScaleLadder ladder = tuning.ladder();
        double free = tuning.curve().key(place01);
        double inScale = Snapper.drawn(tuning.snapping(), ladder, free);
        double key = inScale + tuning.shiftKeys();
        int nearest = (int) Math.rint(key);
        double cents = (key - nearest) * ReferencePitch.CENTS_PER_KEY;
        double hz = tuning.reference().hz(key);
        ObjectNode node = Talk.node();
        node.put("hand", "pitch");
        node.put("atMm", mm);
        node.put("place01", place01);
        node.put("pitchHz", hz);
        node.put("keyNumber", key);
        node.put("noteName", tuning.spelling().name(nearest));
        node.put("centsFromNote", cents);
        talk.say(String.format(
                Locale.ROOT,
                "%8s mm  place %s  %9s Hz  %-4s %+6.1f cents",
                Figures.text(mm, 1),
                Figures.text(place01, 3),
                Figures.text(hz, 2),
                tuning.spelling().name(nearest),
                cents));
        return node;
    }

    private static ObjectNode levelPoint(Talk talk, RoomProfile profile, double mm) {
        HandSetup hand = profile.room().level();
        double place01 = hand == null ? 1 : hand.zone().place01(mm);
        double gain01 = profile.level().gain01(place01);
        ObjectNode node = Talk.node();
        node.put("hand", "level");
        node.put("atMm", mm);
        node.put("place01", place01);
        JsonViews.number(node, "levelDb", gain01 > 0 ? Decibels.of(gain01) : Double.NEGATIVE_INFINITY);
        node.put("gain01", gain01);
        talk.say(String.format(
                Locale.ROOT,
                "%8s mm  place %s  %9s dB",
                Figures.text(mm, 1),
                Figures.text(place01, 3),
                gain01 > 0 ? Figures.text(Decibels.of(gain01), 1) : "silent"));
        return node;
    }
}
