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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The stage. */
final class PlayScene {
    private static final String NOTHING = "\u2013";
    private static final int OCTAVE = 12;
    private static final double HALF_STEP = 0.5;

    private PlayScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        boolean plays = evening.sounding().setting().isPresent();
        if (!evening.sounding().trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, evening.sounding().trouble()));
        }
        blocks.add(new Block.Stage(view(evening, showing)));
        if (plays && showing.stageOnly()) {
            List<Offer> all = new ArrayList<>(playing(evening));
            all.addAll(shifting());
            blocks.add(new Block.Keys(all));
        } else {
            blocks.add(new Block.Offers(plays ? playing(evening) : before(evening)));
        }
        if (plays && !showing.stageOnly()) {
            evening.keeping().profile().ifPresent(profile -> blocks.add(1, new Block.Live(Sights.sent(profile))));
            blocks.add(new Block.Offers(shifting()));
        }
        blocks.addAll(TakeScene.blocks(evening));
        Offer recording = TakeScene.recording(evening);
        if (recording.isPossible()) {
            blocks.add(new Block.Keys(List.of(recording)));
        }
        return new Page(Station.PLAY, blocks);
    }

    private static List<Offer> before(EveningView evening) {
        String whyNot = evening.snapshot().isEmpty()
                ? "no instrument is open: arrive first"
                : evening.keeping().profile().isEmpty() ? "there is no room yet: make one, or load one" : "";
        return List.of(Offer.next(
                        "Get ready to play",
                        "ctrl P",
                        Wish.Plain.PLAY,
                        "opens all ways out; muted until sound is let through")
                .unless(whyNot));
    }

    private static List<Offer> playing(EveningView evening) {
        boolean muted =
                evening.sounding().setting().map(PlayDesk.Setting::muted).orElse(true);
        return List.of(
                Offer.sound(
                                "Let sound through",
                                "ctrl ENTER",
                                Wish.Plain.LET_SOUND,
                                "opens the sound; monitors low first")
                        .unless(muted ? "" : "it is open"),
                Offer.next("Silence", "ESCAPE", Wish.Plain.SILENCE, "closes the sound at once, by a short fade")
                        .unless(muted ? "it is closed" : ""),
                Offer.plain("Next tuning", "PAGE_DOWN", Wish.Plain.NEXT_TUNING, "the room's next one"),
                Offer.plain("Tuning before", "PAGE_UP", Wish.Plain.PREVIOUS_TUNING, "the room's one before"),
                Offer.plain("Stage alone", "F11", Wish.Plain.TURN_STAGE, "fills the window with the stage, or not"),
                Offer.plain("End", "ctrl E", Wish.Plain.STOP_PLAYING, "fades and lets go of the ways out"));
    }

    private static List<Offer> shifting() {
        return List.of(
                Offer.plain("Semitone up", "UP", new Wish.Shift(1), "100 cents higher, for this evening"),
                Offer.plain("Semitone down", "DOWN", new Wish.Shift(-1), "100 cents lower, for this evening"),
                Offer.plain("Octave up", "shift UP", new Wish.Shift(OCTAVE), "1200 cents higher, for this evening"),
                Offer.plain("Octave down", "shift DOWN", new Wish.Shift(-OCTAVE), "1200 cents lower, for this evening"),
                Offer.plain("Steadier", "LEFT", new Wish.Quicken(-HALF_STEP), "half a step; less wobble, more lag"),
                Offer.plain("Quicker", "RIGHT", new Wish.Quicken(HALF_STEP), "half a step; less lag, more wobble"),
                Offer.plain("As kept", "HOME", Wish.Plain.AS_KEPT, "takes back what was added"),
                Offer.plain("Cents", "H", Wish.Plain.TURN_PITCH_HELP, "shows how far pitch is from its note, or not"),
                Offer.plain(
                        "Light",
                        "ctrl L",
                        Wish.Plain.TAKE_LIGHT,
                        "both hands away: takes the present light as open for this evening"));
    }

    static StageView view(EveningView evening, Showing showing) {
        String room = evening.keeping()
                .profile()
                .map(profile -> profile.room().name())
                .orElse("no room");
        String trouble = evening.sounding().targets().stream()
                .map(TargetStatus::trouble)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        if (evening.snapshot().isEmpty()
                || evening.sounding().setting().isEmpty()
                || !(evening.snapshot().get().activity() instanceof ActivityView.Playing playing)) {
            return new StageView(
                    NOTHING,
                    0,
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
