package handspan.show.scene;

import handspan.number.units.Figures;
import handspan.room.budget.RoomCheck;
import handspan.room.budget.VenueLine;
import handspan.wiring.evening.Checked;
import java.util.List;
import java.util.stream.Collectors;

/** What a sound check came to. */
final class CheckWords {
    private CheckWords() {}

    static void on(List<Block> blocks, Checked checked) {
        RoomCheck check = checked.venue().room();
        boolean fits = check.verdict() == RoomCheck.Verdict.FITS;
        blocks.add(new Block.Prompt(
                ArriveScene.capital(check.verdict().words()),
                "pitch up to " + Figures.text(check.pitchCents(), 0) + " cents off, level up to "
                        + Figures.text(check.levelDb(), 1) + " dB"
                        + (checked.seconds() > 0 ? "; taken in " + Figures.text(checked.seconds(), 0) + " s" : "")));
        String reasons = check.reasons().stream().map(WindowWords::of).collect(Collectors.joining("; "));
        if (!reasons.isEmpty()) {
            blocks.add(new Block.Words(fits ? Tone.PLAIN : Tone.LOOK, ArriveScene.capital(reasons)));
        }
        if (!check.remedy().isEmpty()) {
            blocks.add(new Block.Words(Tone.LOOK, "To do: " + WindowWords.of(check.remedy())));
        }
        checked.venue().lines().stream()
                .filter(line -> !line.what().equals("room"))
                .forEach(line -> blocks.add(new Block.Words(
                        tone(line.grade()),
                        ArriveScene.capital(line.what()) + ": " + WindowWords.of(line.reason())
                                + (line.remedy().isEmpty() ? "" : "; to do: " + WindowWords.of(line.remedy())))));
    }

    private static Tone tone(VenueLine.Grade grade) {
        return switch (grade) {
            case GOOD -> Tone.GOOD;
            case NOT_CHECKED -> Tone.QUIET;
            case LOOK -> Tone.LOOK;
            case BAD -> Tone.BAD;
        };
    }
}
