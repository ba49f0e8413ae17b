package handspan.show.scene;

import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.PlayDesk;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.wiring.evening.EveningView;
import java.util.Optional;
import java.util.stream.Collectors;

/** What can be read on stage at one moment. */
final class StageWords {
    private static final String NOTHING = "\u2013";

    private StageWords() {}

    static StageView of(EveningView evening, Showing showing) {
        String room = evening.keeping()
                .profile()
                .map(profile -> profile.room().name())
                .orElse("no room");
        String trouble = evening.sounding().targets().stream()
                .map(TargetStatus::trouble)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        ActivityView.Playing playing = evening.snapshot()
                .flatMap(snapshot -> snapshot.activity().played())
                .orElse(null);
        if (evening.sounding().setting().isEmpty() || playing == null) {
            return new StageView(
                    NOTHING,
                    0,
                    "",
                    "",
                    0,
                    "",
                    evening.sounding().setting().isPresent() ? "getting ready" : "not playing",
                    Tone.QUIET,
                    evening.sounding().setting().isPresent() ? "muted until sound is let through" : "",
                    false,
                    0,
                    Links.few(evening),
                    Links.tone(evening),
                    room,
                    evening.keeping()
                            .profile()
                            .map(profile -> profile.tunings().get(0).name())
                            .orElse(""),
                    "",
                    trouble,
                    showing.pitchHelp());
        }
        PlayDesk.Setting setting = evening.sounding().setting().get();
        boolean hand = playing.frame().map(SoundFrame::hand).orElse(false);
        Optional<SoundFrame> shown = playing.frame().filter(frame -> frame.hand() || frame.gain01() > 0);
        double db = playing.frame()
                .filter(frame -> frame.gain01() > 0)
                .map(frame -> Decibels.of(frame.gain01()))
                .orElse(Double.NEGATIVE_INFINITY);
        LevelCurve curve = evening.keeping().profile().map(RoomProfile::level).orElse(LevelCurve.USUAL);
        String sensor = playing.sensorTrouble();
        return new StageView(
                shown.map(frame -> playing.tuning().spelling().name(frame.key()))
                        .orElse(NOTHING),
                shown.map(SoundFrame::centsFromKey).orElse(0.0),
                shown.map(frame -> cents(frame.centsFromKey())).orElse(""),
                shown.map(frame -> Figures.text(frame.pitchHz(), 1) + " Hz").orElse(""),
                level01(db, curve),
                Double.isFinite(db) ? Figures.text(db, 0) + " dB" : "silent",
                playing.state().word(),
                tone(playing.state()),
                why(playing, setting),
                hand,
                playing.frame().map(SoundFrame::pitchPlace01).orElse(0.0),
                Links.few(evening),
                Links.tone(evening),
                room,
                tuning(setting),
                playing.hint(),
                sensor.isEmpty() ? trouble : trouble.isEmpty() ? sensor : sensor + "; " + trouble,
                showing.pitchHelp());
    }

    private static String cents(double off) {
        return (off > 0 ? "+" : "") + Math.round(off) + " cents";
    }

    private static double level01(double db, LevelCurve curve) {
        return Double.isFinite(db)
                ? Math.max(0, Math.min(1, (db - curve.floorDb()) / (curve.ceilingDb() - curve.floorDb())))
                : 0;
    }

    private static Tone tone(PlayState state) {
        return switch (state) {
            case PLAYING -> Tone.GOOD;
            case AWAY -> Tone.QUIET;
            case MUTED -> Tone.LOOK;
            case LOST -> Tone.BAD;
        };
    }

    private static String why(ActivityView.Playing playing, PlayDesk.Setting setting) {
        if (setting.muted()) {
            return "Ctrl+Enter lets sound through";
        }
        if (!playing.lightMute().isEmpty()) {
            return playing.lightMute();
        }
        return playing.state() == PlayState.LOST ? "the board does not send; it is taken up by itself" : "";
    }

    private static String tuning(PlayDesk.Setting setting) {
        String semitones = setting.transpose() == 0
                ? ""
                : ", " + (setting.transpose() > 0 ? "+" : "") + setting.transpose()
                        + (Math.abs(setting.transpose()) == 1 ? " semitone" : " semitones");
        String quicker = setting.quickness() == 0
                ? ""
                : ", " + Figures.shortest(Math.abs(setting.quickness()))
                        + (setting.quickness() > 0 ? " steps quicker" : " steps steadier");
        return setting.tuning() + semitones + quicker;
    }
}
