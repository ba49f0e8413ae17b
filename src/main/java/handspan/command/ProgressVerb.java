package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.practice.Accuracy;
import handspan.music.practice.PracticeRun;
import handspan.number.units.Figures;
import handspan.profile.Player;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileException;
import handspan.show.chart.Picture;
import handspan.show.chart.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows how a player's practice goes on. */
@Command(name = "progress", description = "shows how a player's practice goes on, run by run")
final class ProgressVerb extends Verb {
    @Option(names = "--player", paramLabel = "NAME", required = true, description = "whose")
    String playerName = "";

    @Mixin
    ProfilesArguments profiles = new ProfilesArguments();

    @Option(names = "--chart", paramLabel = "FILE", description = "draws cents and seconds of each run as PNG")
    @Nullable
    Path chart;

    @Override
    int run(Talk talk) throws UsageException, IOException, ProfileException {
        PlayerFolder players = new PlayerFolder(profiles.folder());
        Player player = players.load(playerName);
        if (player.runs().isEmpty()) {
            throw new ProfileException(
                    ProfileException.Kind.NOT_FOUND,
                    "player '" + player.name() + "' has no run yet ("
                            + (players.names().isEmpty() ? "no player is there" : String.join(", ", players.names()))
                            + "): practise first, with --player");
        }
        ObjectNode result = Talk.node();
        result.put("player", player.name());
        result.put("file", players.fileOf(player.name()).toString());
        ArrayNode runs = result.putArray("runs");
        talk.say(String.format(
                Locale.ROOT,
                "%-20s  %-16s %-10s %-6s %-5s %9s %9s %7s %6s %6s",
                "when",
                "room",
                "tuning",
                "ask",
                "help",
                "cents rms",
                "mm rms",
                "s/note",
                "hit %",
                "notes"));
        for (PracticeRun run : player.runs()) {
            talk.say(line(run));
            ObjectNode node = runs.addObject();
            node.put("at", run.at());
            node.put("room", run.room());
            node.put("tuning", run.tuning());
            node.put("ask", run.asking().word());
            node.put("help", run.help());
            PracticeView.into(node, run.tally());
        }
        Path png = chart;
        if (png != null) {
            AdviseVerb.draw(Picture.progress(player.name(), player.runs(), Theme.LIGHT), png);
            talk.say("chart: " + png);
            result.put("chart", png.toString());
        }
        talk.object(result);
        return Exit.DONE;
    }

    private static String line(PracticeRun run) {
        return String.format(
                Locale.ROOT,
                "%-20s  %-16s %-10s %-6s %-5s %9s %9s %7s %6.0f %6d",
                run.at(),
                run.room(),
                run.tuning(),
                run.asking().word(),
                run.help() ? "yes" : "no",
                run.tally()
                        .accuracy()
                        .map(Accuracy::rmsCents)
                        .map(cents -> Figures.text(cents, 1))
                        .orElse("-"),
                run.tally()
                        .accuracy()
                        .map(Accuracy::rmsMm)
                        .map(mm -> Figures.text(mm, 1))
                        .orElse("-"),
                run.tally()
                        .accuracy()
                        .map(Accuracy::medianSeconds)
                        .map(s -> Figures.text(s, 1))
                        .orElse("-"),
                100 * run.tally().hit01(),
                run.tally().asked());
    }
}
