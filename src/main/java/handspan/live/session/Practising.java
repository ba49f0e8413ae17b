package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.live.path.FrameTarget;
import handspan.music.practice.Attempt;
import handspan.music.practice.Stop;
import handspan.music.practice.WantedNote;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.room.Zone;
import handspan.room.calibrate.ReachWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Asks for one note after another while the instrument is {@link Playing}: all that sounds goes its usual way.
 *
 * <p>States: waiting for readings, asking note 1 .. asking note n, then over. A hand that comes to rest answers a note,
 * and so does the end of its time; each answer goes on to the next. When the link is lost, or lines stop, the note
 * waits for readings and is then asked for anew. When the course is over the instrument plays on.
 */
final class Practising implements Activity {
    private final Playing playing;
    private final Command.Practise command;
    private final Zone zone;
    private final ReachWatch watch;
    private final List<Attempt> attempts = new ArrayList<>();
    private final List<Event.What> news = new ArrayList<>();
    private Tuning tuning;
    private Optional<WantedNote> wanted = Optional.empty();
    private boolean waits = true;
    private boolean stopped;
    private long askedNanos;
    private String reason = "";

    Practising(LineShape shape, Command.Practise command, List<FrameTarget> targets, long startNanos) {
        this.playing = new Playing(shape, command.play(), targets, startNanos);
        this.command = command;
        this.tuning = command.play().tuning();
        this.zone = command.play().profile().room().pitch().zone();
        this.watch = new ReachWatch(shape, command.play().profile().room());
    }

    @Override
    public void onReading(Reading reading) {
        playing.onReading(reading);
        if (isOver() || stopped) {
            return;
        }
        if (waits) {
            waits = false;
            ask(reading.timeNanos());
        }
        watch.onReading(reading).ifPresent(rest -> onRest(rest, reading.timeNanos()));
        String why = watch.takeNews();
        if (!why.isEmpty() && wanted.isPresent()) {
            reason = why;
            news.add(new Event.NoteNotYet(wanted.get(), why));
        }
    }

    private void ask(long timeNanos) {
        reason = "no rest seen";
        if (isOver()) {
            wanted = Optional.empty();
            return;
        }
        int note = command.course().notes().get(attempts.size());
        WantedNote next = WantedNote.of(tuning, attempts.size() + 1, note);
        wanted = Optional.of(next);
        askedNanos = timeNanos;
        watch.ask(zone.mm(next.place01()), timeNanos);
        news.add(new Event.NoteAsked(next, zone.mm(next.place01())));
    }

    private void onRest(ReachWatch.Rest rest, long timeNanos) {
        WantedNote note = wanted.orElseThrow();
        double place01 = zone.place01(rest.mm());
        Stop stop = new Stop(
                note.offCents(tuning, place01),
                rest.mm() - zone.mm(note.place01()),
                rest.standardUncertaintyMm(),
                Nanos.toSeconds(Math.max(0, rest.sinceNanos() - askedNanos)),
                note.holds(tuning, place01));
        answer(new Attempt(note, Optional.of(stop)), timeNanos);
    }

    private void answer(Attempt attempt, long timeNanos) {
        attempts.add(attempt);
        news.add(new Event.NoteAnswered(attempt, attempt.stop().isPresent() ? "" : reason));
        ask(timeNanos);
    }

    @Override
    public void onReadingsTaken(long timeNanos) {
        playing.onReadingsTaken(timeNanos);
        endOfTime(timeNanos);
    }

    @Override
    public void onTick(long timeNanos) {
        if (timeNanos >= playing.nextDeadlineNanos()) {
            playing.onTick(timeNanos);
        }
        endOfTime(timeNanos);
    }

    private void endOfTime(long timeNanos) {
        if (timeNanos >= deadlineNanos()) {
            answer(new Attempt(wanted.orElseThrow(), Optional.empty()), timeNanos);
        }
    }

    private long deadlineNanos() {
        boolean runs = wanted.isPresent() && !waits && !stopped;
        return runs ? askedNanos + Nanos.ofSeconds(command.noteSeconds()) : Long.MAX_VALUE;
    }

    @Override
    public long nextDeadlineNanos() {
        return Math.min(playing.nextDeadlineNanos(), deadlineNanos());
    }

    @Override
    public long heldBack() {
        return playing.heldBack();
    }

    @Override
    public void onLost() {
        playing.onLost();
        waits = true;
    }

    @Override
    public void onBreak() {
        playing.onBreak();
        waits = true;
    }

    @Override
    public boolean onCommand(Command given) {
        if (given instanceof Command.Tune tune
                && !tuning.ladder().hasNotesOf(tune.tuning().ladder())) {
            news.add(new Event.TuningRefused(
                    tune.tuning().name(), "it has other notes than the course goes through: end the course first"));
            return true;
        }
        stopped |= given instanceof Command.Stop;
        boolean meant = playing.onCommand(given);
        if (given instanceof Command.Tune) {
            retune();
        }
        return meant;
    }

    /** What plays now, if the room could take it: transposed, the same place has another name. */
    private void retune() {
        Tuning now = playing.tuning();
        boolean moved = !now.equals(tuning);
        tuning = now;
        if (moved && wanted.isPresent()) {
            waits = true;
        }
    }

    @Override
    public void silence(long timeNanos) {
        playing.silence(timeNanos);
    }

    @Override
    public List<Event.What> takeEvents() {
        List<Event.What> events = new ArrayList<>(playing.takeEvents());
        events.addAll(news);
        news.clear();
        return events;
    }

    private boolean isOver() {
        return attempts.size() == command.course().size();
    }

    @Override
    public boolean isDone() {
        return playing.isDone();
    }

    @Override
    public ActivityView view() {
        return new ActivityView.Practising(
                playing.view(),
                isOver() ? Optional.empty() : wanted,
                reason,
                attempts,
                command.course().size(),
                isOver());
    }
}
