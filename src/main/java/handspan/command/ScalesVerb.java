package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tonic;
import handspan.number.units.Figures;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the scales that are known. */
@Command(
        name = "scales",
        description =
                "lists the scales that are known, with their steps in cents and, in a key, what their notes are called")
final class ScalesVerb extends Verb {
    @Option(names = "--key", paramLabel = "NOTE", description = "tonic, for example D or Bb: names the notes")
    @Nullable
    String key;

    @Option(
            names = "--temperament",
            paramLabel = "HOW",
            defaultValue = "12-equal",
            description = "5-equal..53-equal or just (${DEFAULT-VALUE}); scales of cents and ratios stay as written")
    String temperament = EqualDivision.TWELVE.word();

    @Override
    int run(Talk talk) throws UsageException {
        String named = key;
        Tonic tonic = named == null ? null : UsageException.reading(() -> Tonic.parse(named));
        Temperament chosen = UsageException.reading(() -> Temperament.parse(temperament));
        ObjectNode result = Talk.node();
        result.put("temperament", chosen.word());
        ArrayNode scales = result.putArray("scales");
        for (Scale scale : Scales.all()) {
            show(talk, scales.addObject(), scale, chosen, tonic);
        }
        talk.object(result);
        return Exit.DONE;
    }

    private static void show(Talk talk, ObjectNode node, Scale scale, Temperament temperament, @Nullable Tonic tonic) {
        node.put("name", scale.name());
        node.put("followsTemperament", scale.isOfTheTwelve());
        ArrayNode steps = node.putArray("stepsCents");
        String words;
        try {
            List<Double> cents = scale.stepsCents(temperament);
            cents.forEach(steps::add);
            words = cents.stream().map(step -> Figures.text(step, 0)).collect(Collectors.joining(" "));
            if (tonic != null) {
                List<String> names = temperament.equals(EqualDivision.TWELVE) || !scale.isEveryNote()
                        ? scale.noteNames(tonic)
                        : List.of();
                ArrayNode notes = node.putArray("notes");
                names.forEach(notes::add);
                words = String.join(" ", names) + (names.isEmpty() ? "" : "   ") + words;
            }
        } catch (IllegalArgumentException e) {
            words = "does not fit: " + e.getMessage();
            node.put("refused", e.getMessage());
        }
        if (!talk.isJson()) {
            talk.say(String.format(Locale.ROOT, "%-22s %s", scale.name(), words));
        }
    }
}
