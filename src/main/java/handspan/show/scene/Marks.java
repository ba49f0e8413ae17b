package handspan.show.scene;

import handspan.live.session.PlayDesk;
import handspan.wiring.Source;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Keeping;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How each station stands, and the words along the foot. */
final class Marks {
    private Marks() {}

    static List<Screen.Mark> of(EveningView evening, Showing showing) {
        return Arrays.stream(Station.values())
                .map(station -> mark(station, evening, showing))
                .toList();
    }

    private static Screen.Mark mark(Station station, EveningView evening, Showing showing) {
        Keeping keeping = evening.keeping();
        boolean room = keeping.profile().isPresent();
        return switch (station) {
            case ARRIVE ->
                new Screen.Mark(
                        station,
                        Links.tone(evening) == Tone.GOOD
                                        && evening.arrival().instrument().isEmpty()
                                ? Tone.LOOK
                                : Links.tone(evening),
                        evening.arrival()
                                .source()
                                .map(source -> source.kind() == Source.Kind.TAKE ? "a recording" : source.text())
                                .orElse(""));
            case PATCH ->
                new Screen.Mark(
                        station,
                        showing.patchHeard() ? Tone.GOOD : Tone.QUIET,
                        showing.patchHeard() ? "heard" : "not tried");
            case ROOM ->
                new Screen.Mark(
                        station,
                        !room ? Tone.QUIET : Tone.GOOD,
                        keeping.profile().map(profile -> profile.room().name()).orElse(""));
            case NOTES ->
                new Screen.Mark(
                        station,
                        room ? Tone.GOOD : Tone.QUIET,
                        keeping.profile()
                                .map(profile -> profile.tunings().get(0))
                                .map(tuning -> tuning.lowName() + " to " + tuning.highName())
                                .orElse(""));
            case LEVEL ->
                new Screen.Mark(
                        station,
                        room ? Tone.GOOD : Tone.QUIET,
                        keeping.profile()
                                .map(profile ->
                                        "up to " + Math.round(profile.level().ceilingDb()) + " dB")
                                .orElse(""));
            case PLAY -> new Screen.Mark(station, sound(evening), soundWords(evening));
            case SHELF ->
                new Screen.Mark(
                        station,
                        keeping.unsaved() ? Tone.LOOK : Tone.QUIET,
                        keeping.unsaved() ? "not saved" : keeping.rooms().size() + " kept");
        };
    }

    private static Tone sound(EveningView evening) {
        return evening.sounding()
                .setting()
                .map(setting -> setting.muted() ? Tone.LOOK : Tone.GOOD)
                .orElse(Tone.QUIET);
    }

    private static String soundWords(EveningView evening) {
        Optional<PlayDesk.Setting> setting = evening.sounding().setting();
        return evening.sounding().trying()
                ? "trying"
                : setting.isEmpty() ? "" : setting.get().muted() ? "muted" : "sound is open";
    }

    static List<Screen.Status> status(EveningView evening) {
        Keeping keeping = evening.keeping();
        String sound = soundWords(evening);
        return List.of(
                new Screen.Status("Link", Links.few(evening), Links.tone(evening)),
                new Screen.Status("Sound", sound.isEmpty() ? "closed" : sound, sound(evening)),
                new Screen.Status(
                        "Room",
                        keeping.profile().isEmpty()
                                ? "none yet"
                                : keeping.held() + (keeping.unsaved() ? ", not saved" : ""),
                        keeping.unsaved() ? Tone.LOOK : Tone.QUIET),
                new Screen.Status("", evening.doing().isEmpty() ? "" : evening.doing() + " ...", Tone.QUIET));
    }
}
