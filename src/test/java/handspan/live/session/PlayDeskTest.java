package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Tuning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a player may expect of knobs: they turn, they stop at their ends, they keep where they stand. */
class PlayDeskTest {
    private static final Tuning FIRST = Tuning.usual();
    private static final Tuning SECOND = Tuning.usual().named("second").shifted(12, 20);

    private final List<Command> commands = new ArrayList<>();
    private final PlayDesk desk = new PlayDesk(List.of(FIRST, SECOND), FIRST, true, commands::add);

    private Tuning tuned() {
        return ((Command.Tune) commands.get(commands.size() - 1)).tuning();
    }

    @Test
    void muteIsAbsoluteAndSaidOnce() {
        desk.mute(true);
        assertEquals(List.of(), commands);
        desk.mute(false);
        desk.mute(false);
        desk.turnMute();
        assertEquals(List.of(new Command.Mute(false), new Command.Mute(true)), commands);
    }

    @Test
    void transpositionAndTrimAreAddedToThoseOfTheTuningAndStayWhenItChanges() {
        assertEquals(Optional.empty(), desk.transposeTo(2));
        assertEquals(Optional.empty(), desk.trimTo(-7.5));
        assertEquals(Optional.empty(), desk.choose("second"));
        assertEquals("second", tuned().name());
        assertEquals(14, tuned().transpose());
        assertEquals(12.5, tuned().trimCents());
        assertEquals(new PlayDesk.Setting("second", 2, 2, -7.5, 0, true), desk.setting());
        desk.unshift();
        assertEquals(SECOND, tuned());
    }

    @Test
    void whatIsSaidAgainIsNotDoneAgain() {
        desk.transposeTo(2);
        desk.transposeTo(2);
        desk.choose(1);
        desk.choose("first");
        assertEquals(1, commands.size());
    }

    @Test
    void keysStepFromWhereRemoteControlHasLeftIt() {
        desk.choose(2);
        desk.transposeTo(-3);
        desk.shift(1, 5);
        assertEquals(SECOND.shifted(10, 25), tuned());
        desk.next();
        assertEquals(FIRST.shifted(-2, 5), tuned());
    }

    @Test
    void whatNoTuningCanHaveIsRefusedAndNothingChanges() {
        for (Optional<String> refusal : List.of(
                desk.transposeTo(49),
                desk.transposeTo(Integer.MIN_VALUE),
                desk.transposeTo(Integer.MAX_VALUE),
                desk.trimTo(Double.NaN),
                desk.trimTo(Double.POSITIVE_INFINITY),
                desk.trimTo(101),
                desk.choose(0),
                desk.choose(3),
                desk.choose("third"),
                desk.quicken(9))) {
            assertTrue(refusal.isPresent());
        }
        assertEquals(List.of(), commands);
        assertEquals(new PlayDesk.Setting("first", 1, 0, 0, 0, true), desk.setting());
        desk.choose(2);
        assertTrue(desk.transposeTo(Integer.MAX_VALUE).isPresent(), "its own transposition is added");
        assertTrue(desk.transposeTo(37).isPresent());
        assertTrue(desk.transposeTo(36).isEmpty());
    }

    @Test
    void aTuningThatTheRoomRefusesIsTakenBackAndTheNextKeyGoesOnFromThere() {
        desk.transposeTo(2);
        desk.next();
        desk.onRefused(FIRST.shifted(2, 0));
        assertEquals(new PlayDesk.Setting("first", 1, 2, 0, 0, true), desk.setting());
        desk.shift(1, 0);
        assertEquals(FIRST.shifted(3, 0), tuned());
    }

    @Test
    void overTuningsThatWereChangedWhatWasAddedStaysAndOnlyWhatDiffersIsToldToWhatPlays() {
        desk.transposeTo(3);
        commands.clear();
        desk.follow(List.of(FIRST, SECOND, SECOND.named("third")), "first");
        assertEquals(List.of(), commands);
        assertEquals(new PlayDesk.Setting("first", 1, 3, 0, 0, true), desk.setting());
        desk.follow(List.of(SECOND, FIRST.named("reel"), SECOND.named("third")), "reel");
        assertEquals("reel", tuned().name());
        assertEquals(3, tuned().transpose());
        assertEquals(new PlayDesk.Setting("reel", 2, 3, 0, 0, true), desk.setting());
        assertEquals(Optional.empty(), desk.choose("third"));
    }

    @Test
    void aTuningThatIsGoneMakesRoomForTheFirstAndWhatItCannotHaveIsDropped() {
        desk.transposeTo(Tuning.MOST_TRANSPOSE);
        desk.follow(List.of(SECOND), "first");
        assertEquals(SECOND, tuned(), "12 and 48 semitones are more than any tuning can have");
        assertEquals(new PlayDesk.Setting("second", 1, 0, 0, 0, true), desk.setting());
    }
}
