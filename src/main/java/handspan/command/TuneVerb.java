package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.Advice;
import handspan.room.budget.StepsBudget;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes a tuning of a room, adds or removes one. */
@Command(
        name = "tune",
        description = "shows, changes, adds or removes a tuning of a room",
        footer = {
            "",
            "A room can have several tunings: a new --name adds one that starts as the first is. While playing, 't' and Enter"
                    + " goes to the next.",
            "'handspan scales' lists the scales, 'handspan advise' says which this room can hold."
        })
final class TuneVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "which tuning (default: the first); a new name adds one")
    @Nullable
    String name;

    @Option(names = "--first", description = "it becomes the room's first, which plays unless another is named")
    boolean first;

    @Option(names = "--remove", description = "it is removed from the room")
    boolean remove;

    @Mixin
    TuningArguments arguments = new TuningArguments();

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        String wanted = name == null ? profile.tunings().get(0).name() : name;
        RoomProfile changed = remove
                ? UsageException.reading(() -> profile.without(wanted))
                : UsageException.reading(() -> changed(profile, wanted));
        if (!changed.equals(profile)) {
            room.folder().save(changed);
        }
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("saved", !changed.equals(profile));
        Tuning shown = remove ? changed.tunings().get(0) : changed.tuning(wanted);
        result.set("tuning", RoomSummary.tuning(shown, profile.room().pitch().zone()));
        result.put("tunings", changed.tunings().size());
        RoomSummary.lines(new RoomProfile(profile.room(), List.of(shown), profile.level(), profile.send())).stream()
                .filter(line -> line.startsWith("tuning") || line.startsWith("feel"))
                .forEach(talk::say);
        Optional<String> refusal = StepsBudget.refusal(profile.room(), shown);
        refusal.ifPresent(talk::warn);
        refusal.ifPresent(reason -> result.put("refused", reason));
        Advice.warning(profile.room(), shown, profile.room().aim()).ifPresent(warning -> {
            talk.say(warning);
            result.put("warning", warning);
        });
        talk.object(result);
        return Exit.DONE;
    }

    private RoomProfile changed(RoomProfile profile, String wanted) {
        boolean there =
                profile.tunings().stream().anyMatch(tuning -> tuning.name().equals(wanted));
        Tuning before = there ? profile.tuning(wanted) : profile.tunings().get(0);
        RoomProfile changed = profile.with(arguments.changed(before, wanted));
        return first ? changed.startingWith(wanted) : changed;
    }
}
