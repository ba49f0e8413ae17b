package handspan.command;

import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.music.practice.Attempt;
import handspan.music.practice.Course;
import handspan.music.practice.PracticeInWords;
import handspan.music.practice.WantedNote;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.Zone;
import handspan.wiring.Cues;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Asks the player for notes, helps on the way to them, and says what became of them. */
final class PracticeTalk {
    private static final long HELP_NANOS = Nanos.PER_SECOND;

    private final Talk talk;
    private final CourseArguments wishes;
    private final Cues cues;
    private final Zone zone;
    private final int notes;
    private final Pulse help = new Pulse(HELP_NANOS);
    private final Deafness deafness;
    private @Nullable WantedNote hidden;

    /** Sounded again by the thread that reads the keys. */
    private volatile @Nullable WantedNote wanted;

    /** Whether notes that should sound can't be heard; known by another thread. */
    static final class Deafness {
        private volatile boolean deaf;

        /** From now on nothing is heard. */
        void begin() {
            deaf = true;
        }

        boolean is() {
            return deaf;
        }
    }

    /**
     * Nothing was asked for yet.
     *
     * @param cues sounds the notes
     * @param deafness where they can't be heard their names are shown
     */
    PracticeTalk(Talk talk, CourseArguments wishes, Cues cues, Deafness deafness, Zone zone, Course course) {
        this.talk = talk;
        this.wishes = wishes;
        this.cues = cues;
        this.deafness = deafness;
        this.zone = zone;
        this.notes = course.size();
    }

    /** Something has happened; what is not about the course is no news here. */
    void tell(Event event) {
        if (event.what() instanceof Event.NoteAsked asked) {
            ask(asked);
        } else if (event.what() instanceof Event.NoteAnswered answered) {
            answer(answered);
        } else if (event.what() instanceof Event.NoteNotYet notYet) {
            Map<String, Object> fields = fields(notYet.note());
            fields.put("reason", notYet.reason());
            talk.say("   not yet: " + notYet.reason());
            talk.event("notYet", fields);
        }
    }

    private boolean shows() {
        return wishes.asking.shows() || deafness.is();
    }

    private void ask(Event.NoteAsked asked) {
        WantedNote note = asked.note();
        wanted = note;
        hidden = shows() ? null : note;
        sound();
        talk.say("-> note " + note.number() + " of " + notes + ": " + (shows() ? note.name() : "listen"));
        Map<String, Object> fields = fields(note);
        fields.put("keyNumber", note.key());
        fields.put("pitchHz", note.hz());
        fields.put("atMm", asked.placeMm());
        fields.put("place01", note.place01());
        fields.put("shown", shows());
        fields.put("sounded", wishes.asking.sounds() && !deafness.is());
        talk.event("asked", fields);
    }

    /** Sounds the note that is asked for, again where it was heard before. */
    void sound() {
        WantedNote note = wanted;
        if (note != null && wishes.asking.sounds()) {
            cues.note(note.hz());
        }
    }

    private void answer(Event.NoteAnswered answered) {
        Attempt attempt = answered.attempt();
        Map<String, Object> fields = fields(attempt.wanted());
        fields.put("reached", attempt.stop().isPresent());
        attempt.stop().ifPresent(stop -> {
            fields.put("offCents", stop.offCents());
            fields.put("offMm", stop.offMm());
            fields.put("standardUncertaintyMm", stop.standardUncertaintyMm());
            fields.put("seconds", stop.seconds());
        });
        fields.put("reason", answered.reason());
        talk.say("   "
                + PracticeInWords.of(
                        attempt,
                        "no rest within " + Figures.text(wishes.noteSeconds, 0) + " s (" + answered.reason() + ")"));
        talk.event(attempt.isHit() ? "found" : "missed", fields);
    }

    /** Once a second: how far the note is, and which way. */
    void help(Snapshot snapshot) {
        WantedNote late = hidden;
        if (late != null && deafness.is()) {
            hidden = null;
            talk.say("-> note " + late.number() + " of " + notes + ": " + late.name());
        }
        if (!wishes.helps()
                || !(snapshot.activity() instanceof ActivityView.Practising practising)
                || practising.wanted().isEmpty()
                || !practising.playing().hands().pitch()
                || !help.isDue(snapshot.timeNanos())) {
            return;
        }
        WantedNote note = practising.wanted().get();
        double handMm = practising.playing().hands().pitchMm();
        double wayMm = zone.mm(note.place01()) - handMm;
        double wayCents = -note.offCents(practising.playing().tuning(), zone.place01(handMm));
        talk.say("   " + way(wayMm, wayCents));
        Map<String, Object> fields = fields(note);
        fields.put("wayMm", wayMm);
        fields.put("wayCents", wayCents);
        talk.event("help", fields);
    }

    private static String way(double wayMm, double wayCents) {
        return PracticeInWords.isThere(wayMm)
                ? "there: hold still"
                : PracticeInWords.way(wayMm) + " (" + Figures.text(Math.abs(wayCents), 0) + " cents "
                        + (wayCents > 0 ? "higher" : "lower") + ")";
    }

    private static Map<String, Object> fields(WantedNote note) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("number", note.number());
        fields.put("note", note.name());
        return fields;
    }
}
