package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.number.units.Figures;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;

/** Lists the scales that are known. */
@Command(name = "scales", description = "lists the scales that are known, with their steps in cents")
final class ScalesVerb extends Verb {
    @Override
    int run(Talk talk) {
        ObjectNode result = Talk.node();
        ArrayNode scales = result.putArray("scales");
        for (Scale scale : Scales.all()) {
            ObjectNode node = scales.addObject();
            node.put("name", scale.name());
            ArrayNode steps = node.putArray("stepsCents");
            scale.stepsCents().forEach(steps::add);
            if (!talk.isJson()) {
                talk.say(String.format(
                        java.util.Locale.ROOT,
                        "%-18s %s",
                        scale.name(),
                        scale.stepsCents().stream()
                                .map(step -> Figures.text(step, 0))
                                .collect(Collectors.joining(" "))));
            }
        }
        talk.object(result);
        return Exit.DONE;
    }
}
