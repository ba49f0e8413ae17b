package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SendValue;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes what a room sends and where to. */
@Command(name = "send", description = "shows or changes what a room sends, and where to")
final class SendVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--add", paramLabel = "TARGET", description = "send there too: udp:HOST:PORT")
    List<String> add = List.of();

    @Option(names = "--remove", paramLabel = "TARGET", description = "send there no more")
    List<String> remove = List.of();

    @Option(
            names = "--address",
            paramLabel = "VALUE=ADDRESS",
            description = "another address for a value, for example" + " pitch=/lead/hz")
    List<String> addresses = List.of();

    @Option(names = "--on", paramLabel = "VALUE", description = "send this value")
    List<String> on = List.of();

    @Option(names = "--off", paramLabel = "VALUE", description = "do not send this value")
    List<String> off = List.of();

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        SendPlan after = UsageException.reading(() -> changed(profile.send()));
        boolean changed = !after.equals(profile.send());
        if (changed) {
            room.folder().save(profile.with(after));
        }
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("saved", changed);
        ArrayNode targets = result.putArray("targets");
        after.targets().forEach(target -> targets.add(target.text()));
        ArrayNode lines = result.putArray("lines");
        talk.say("to " + (after.targets().isEmpty() ? "nobody" : String.join(", ", texts(after))));
        for (SendLine line : after.lines()) {
            ObjectNode node = lines.addObject();
            node.put("value", line.value().word());
            node.put("address", line.address());
            node.put("types", line.value().types());
            node.put("on", line.on());
            talk.say(String.format(
                    Locale.ROOT,
                    "  %-7s %-3s %s%s",
                    line.value().word(),
                    line.value().types(),
                    line.address(),
                    line.on() ? "" : "  (off)"));
        }
        talk.object(result);
        return Exit.DONE;
    }

    private static List<String> texts(SendPlan plan) {
        return plan.targets().stream().map(SendTarget::text).toList();
    }

    private SendPlan changed(SendPlan before) {
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
        List<SendLine> lines = new ArrayList<>(before.lines());
        for (String text : addresses) {
            int equals = text.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException("'" + text + "' (VALUE=ADDRESS): write it like pitch=/lead/hz");
            }
            int index = indexOf(lines, text.substring(0, equals));
            lines.set(index, new SendLine(lines.get(index).value(), text.substring(equals + 1), true));
        }
        on.forEach(word -> turn(lines, word, true));
        off.forEach(word -> turn(lines, word, false));
        return new SendPlan(lines, targets);
    }

    private static void turn(List<SendLine> lines, String word, boolean on) {
        int index = indexOf(lines, word);
        lines.set(index, new SendLine(lines.get(index).value(), lines.get(index).address(), on));
    }

    private static int indexOf(List<SendLine> lines, String word) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).value().word().equals(word)) {
                return i;
            }
        }
        StringBuilder known = new StringBuilder();
        for (SendValue value : SendValue.values()) {
            known.append(known.isEmpty() ? "" : ", ").append(value.word());
        }
        throw new IllegalArgumentException("value '" + word + "' (" + known + "): name one of these");
    }
}
