package handspan.command;

import handspan.live.session.Event;
import handspan.music.tuning.NoteName;
import handspan.number.units.Figures;
import handspan.room.StepKind;
import handspan.room.calibrate.Step;
import java.util.LinkedHashMap;
import java.util.Map;

/** Says what happens while holds are being captured: the same for a calibration, a re-fit and a check. */
final class CalibrationTalk {
    private CalibrationTalk() {}

    static void tell(Talk talk, Event event) {
        if (event.what() instanceof Event.Asked asked) {
            talk.say("-> " + asked.step().prompt());
            Map<String, Object> fields = fields(asked.step());
            fields.put("readyS", asked.readySeconds());
            talk.event("step", fields);
        } else if (event.what() instanceof Event.Holding holding) {
            Map<String, Object> fields = fields(holding.step());
            fields.put("remainingS", holding.remainingSeconds());
            talk.say((holding.step().kind() == StepKind.REST ? "   stay away ... " : "   hold still ... ")
                    + Figures.text(holding.remainingSeconds(), 1) + " s");
            talk.event("holding", fields);
        } else if (event.what() instanceof Event.Undone undone) {
            Map<String, Object> fields = fields(undone.step());
            fields.put("reason", undone.reason());
            talk.say("   once more (" + undone.reason() + ")");
            talk.event("undone", fields);
        } else if (event.what() instanceof Event.Captured captured) {
            Map<String, Object> fields = fields(captured.step());
            captured.hold().ifPresent(hold -> {
                fields.put("value", hold.physical());
                fields.put("standardUncertainty", hold.standardUncertainty());
                fields.put("noise", hold.noise());
                fields.put("count", hold.count());
            });
            captured.steadiness().ifPresent(steadiness -> {
                fields.put("wander", steadiness.slow());
                fields.put("driftPerS", steadiness.driftPerS());
                fields.put("effectiveCount", steadiness.effectiveCount());
                fields.put("linesPerUpdate", steadiness.linesPerUpdate());
            });
            talk.say("   captured" + captured.words());
            talk.event("captured", fields);
        } else if (event.what() instanceof Event.NotYet notYet) {
            Map<String, Object> fields = fields(notYet.step());
            fields.put("reason", notYet.reason());
            talk.say("   not yet: " + notYet.reason());
            talk.event("refused", fields);
        } else if (event.what() instanceof Event.BoardChanged changed) {
            talk.warn(changed.words());
            talk.event("boardChanged", Map.of("words", changed.words(), "gone", changed.gone()));
        } else {
            LinkTalk.tellTrouble(talk, event);
        }
    }

    private static Map<String, Object> fields(Step step) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("step", step.kind().word());
        fields.put("hand", step.hand().word());
        step.mm().ifPresent(mm -> fields.put("mm", mm));
        step.key().ifPresent(key -> fields.put("note", NoteName.of(key)));
        step.reach().ifPresent(reach -> {
            fields.put("target", reach.target().word());
            fields.put("reach", reach.number());
        });
        return fields;
    }
}
