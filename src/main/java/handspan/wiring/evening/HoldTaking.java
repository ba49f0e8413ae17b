package handspan.wiring.evening;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.LinkFacts;
import handspan.live.session.Snapshot;
import handspan.music.send.SendTarget;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Aim;
import handspan.room.Room;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Outcome;
import handspan.room.calibrate.Refit;
import handspan.wiring.Cues;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.NewRoom;
import handspan.wiring.Rigs;
import handspan.wiring.VenueCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Leads through the holds of an evening, and makes of them a room, or a judgement of one. */
public final class HoldTaking {
    private static final double CHECK_S = 1.5;

    private final EveningState state;
    private final Turns turns;
    private final SoundOut sound;
    private final RoomInHand room;
    private final Cues cues;
    private volatile long beganNanos;

    HoldTaking(EveningState state, Turns turns, SoundOut sound, RoomInHand room, Cues cues) {
        this.state = state;
        this.turns = turns;
        this.sound = sound;
        this.room = room;
        this.cues = cues;
    }

    /**
     * How a fresh room is measured. Without ruler and notes it is by its two ends.
     *
     * @param rulerMm true distances, rising
     * @param keys where notes shall be, from near to far, by ear
     * @param reaches whether ten unaided reaches follow
     */
    public record Way(List<Double> rulerMm, List<Integer> keys, boolean reaches) {
        /** By the two ends alone. */
        public static final Way ENDS = new Way(List.of(), List.of(), false);

        /** Copies the lists, of which one at most is filled. */
        public Way {
            rulerMm = List.copyOf(rulerMm);
            keys = List.copyOf(keys);
            if (!rulerMm.isEmpty() && !keys.isEmpty()) {
                throw new IllegalArgumentException("by ruler and by ear are two ways: leave one of both empty");
            }
        }

        private CalibrationPlan plan(Instrument instrument) {
            CalibrationPlan plan = !rulerMm.isEmpty()
                    ? CalibrationPlan.byRuler(instrument, rulerMm)
                    : !keys.isEmpty()
                            ? CalibrationPlan.byEar(instrument, keys)
                            : CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
            return reaches ? plan.withReaches() : plan;
        }
    }

    /**
     * Leads through holds.
     *
     * @param purpose what for; all but {@link HoldPurpose#FRESH} need a room
     * @param way how a fresh room is measured
     */
    public void begin(HoldPurpose purpose, Way way) {
        turns.add("getting ready", state::measuringTrouble, () -> {
            sound.endTrial();
            sound.endPlaying();
            OpenInstrument instrument = state.needInstrument();
            Optional<String> rebuilt = purpose == HoldPurpose.FRESH
                    ? Optional.empty()
                    : new InstrumentShelf(room.folder())
                            .rebuiltSince(state.needProfile().room());
            if (rebuilt.isPresent()) {
                Optional<Checked> check = purpose == HoldPurpose.CHECK
                        ? Optional.of(new Checked(VenueCheck.rebuilt(rebuilt.get()), 0))
                        : Optional.empty();
                String trouble = check.isPresent() ? "" : rebuilt.get();
                state.change(now -> now.with(new Measuring(Optional.empty(), List.of(), check, trouble)));
                return;
            }
            HoldTask task = task(purpose, way, state.view(), instrument);
            beganNanos = instrument.snapshot().timeNanos();
            state.change(now -> now.with(new Measuring(Optional.of(task), List.of(), Optional.empty(), "")));
            instrument.submit(new Command.Calibrate(
                    task.instrument(), task.instrument().sensors(task.air()), task.plan(), task.rules()));
        });
    }

    private HoldTask task(HoldPurpose purpose, Way way, EveningView seen, OpenInstrument open) throws ProfileException {
        Snapshot snapshot = open.snapshot();
        long last = snapshot.events().isEmpty()
                ? 0
                : snapshot.events().get(snapshot.events().size() - 1).number();
        if (purpose == HoldPurpose.FRESH) {
            room.folder().requireName(seen.keeping().name());
            Instrument found = linked(
                    seen.arrival()
                            .instrument()
                            .orElseThrow(() -> new IllegalArgumentException(
                                    "it is not known which number is which hand: find the hands first")),
                    open.rig().facts());
            var shape = snapshot.shape()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "no line with a number has come yet: is the board's program running?"));
            Instrument instrument = new InstrumentShelf(room.folder()).known(found.withShape(shape), false);
            return new HoldTask(purpose, way.plan(instrument), HoldRules.USUAL, instrument, Air.USUAL, last);
        }
        Room kept = state.needProfile().room();
        CalibrationPlan ends = Refit.plan(kept, purpose == HoldPurpose.LIGHT);
        CalibrationPlan plan = purpose == HoldPurpose.AIM ? ends.withReaches() : ends;
        HoldRules rules = purpose == HoldPurpose.CHECK ? HoldRules.USUAL.lasting(CHECK_S) : HoldRules.USUAL;
        return new HoldTask(purpose, plan, rules, kept.instrument(), kept.air(), last);
    }

    private static Instrument linked(Instrument instrument, LinkFacts facts) {
        return facts.equals(LinkFacts.NONE)
                ? instrument
                : instrument.at(facts.baud(), facts.identity() == null ? instrument.port() : facts.identity());
    }

    /** Takes the last hold again. */
    public void undo() {
        state.order(new Command.Undo());
    }

    /** Ends the holds without a room. */
    public void stop() {
        state.change(seen -> seen.with(Measuring.nothing()));
        state.order(new Command.Stop());
        state.order(new Command.Watch());
    }

    /** Tells a player why holds could not be begun. */
    public void refuse(String reason) {
        state.measuringTrouble(reason);
    }

    /** What was being measured is over with the instrument that is let go. */
    void letGo() {
        state.change(seen -> seen.with(new Measuring(
                Optional.empty(), seen.measuring().refusals(), seen.measuring().check(), "")));
    }

    /** Makes of holds that are done what they were taken for; by the thread that follows the instrument. */
    void conclude(Snapshot snapshot, ActivityView.Calibrating done) {
        Optional<HoldTask> task = state.view().measuring().task();
        boolean own = task.isPresent()
                && snapshot.events().stream()
                        .anyMatch(event ->
                                event.number() > task.get().afterEvent() && event.what() instanceof Event.Captured);
        if (!own) {
            return;
        }
        state.change(seen -> seen.with(Measuring.nothing()));
        cues.finished();
        state.order(new Command.Watch());
        turns.add("making the room", state::measuringTrouble, () -> finish(task.get(), snapshot, done));
    }

    private void check(Snapshot snapshot, ActivityView.Calibrating done) {
        RoomProfile kept = state.needProfile();
        double seconds = Nanos.toSeconds(snapshot.timeNanos() - beganNanos);
        VenueCheck venue =
                VenueCheck.of(kept, kept.room(), VenueCheck.link(snapshot, kept.room()), done.holds(), false);
        state.change(now ->
                now.with(new Measuring(Optional.empty(), List.of(), Optional.of(new Checked(venue, seconds)), "")));
    }

    private void finish(HoldTask task, Snapshot snapshot, ActivityView.Calibrating done) throws ProfileException {
        if (task.purpose() == HoldPurpose.CHECK) {
            check(snapshot, done);
            return;
        }
        EveningView seen = state.view();
        Optional<RoomProfile> before = task.purpose() == HoldPurpose.FRESH
                ? Optional.empty()
                : seen.keeping().profile();
        String name =
                before.map(kept -> kept.room().name()).orElse(seen.keeping().name());
        Outcome outcome = before.isEmpty()
                ? Fit.fit(name, Rigs.dateAndTime(), task.instrument(), task.air(), done.ratePerS(), done.holds())
                : Refit.of(name, Rigs.dateAndTime(), before.get().room(), done.holds());
        Aim aim = before.map(profile -> profile.room().aim()).orElse(Aim.ASSUMED);
        Outcome known = outcome.knowing(aim);
        if (known.room().isEmpty()) {
            state.change(now -> now.with(new Measuring(Optional.empty(), known.reasons(), Optional.empty(), "")));
            return;
        }
        List<String> targets =
                seen.sounding().wanted().stream().map(SendTarget::text).toList();
        RoomProfile made = new NewRoom(room.folder(), name, targets).made(known, before.orElse(null));
        List<String> told = new ArrayList<>();
        known.byEar().ifPresent(heard -> told.add(heard.words()));
        state.change(now -> now.with(Measuring.told(told)));
        room.take(made);
    }
}
