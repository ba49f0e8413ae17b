package handspan.wiring.evening;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.path.TargetStatus;
import handspan.live.session.PlayDesk;
import handspan.live.session.PortInfo;
import handspan.live.session.Snapshot;
import handspan.music.send.SendTarget;
import handspan.music.tuning.Tuning;
import handspan.profile.KeptRoom;
import handspan.profile.RoomComparison;
import handspan.profile.RoomHistory;
import handspan.profile.RoomProfile;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.VenueCheck;
import java.util.List;
import java.util.Optional;

/**
 * An evening as it stands at one moment: all that a window draws. Immutable.
 *
 * @param doing what is being done meanwhile, in words; empty when nothing is
 * @param arrival the instrument and how it is connected
 * @param keeping the rooms, and the one that is worked on
 * @param measuring holds that are being taken, and what came of the last ones
 * @param sounding where sound goes
 * @param thought what the room that is worked on can hold
 * @param snapshot of the open instrument
 * @param taking recordings: one that runs in place of a board, one that is made, those that are kept
 * @param surveyed sensors that are being judged, and what came of it
 */
public record EveningView(
        String doing,
        Arrival arrival,
        Keeping keeping,
        Measuring measuring,
        Sounding sounding,
        Thought thought,
        Optional<Snapshot> snapshot,
        Taking taking,
        Surveyed surveyed) {
    /** With neither a recording nor a survey. */
    public EveningView(
            String doing,
            Arrival arrival,
            Keeping keeping,
            Measuring measuring,
            Sounding sounding,
            Thought thought,
            Optional<Snapshot> snapshot) {
        this(doing, arrival, keeping, measuring, sounding, thought, snapshot, Taking.nothing(), Surveyed.nothing());
    }

    /**
     * The instrument and how it is connected.
     *
     * @param ports of this machine
     * @param looked whether they were looked for at all
     * @param source that is open, or is being opened
     * @param options how
     * @param instrument which number is which hand; empty until it is known
     * @param sure whether that is sure enough to go on without a look
     * @param remarks why it is taken so, in words
     * @param trouble what went wrong, in words with what to do; empty when nothing did
     */
    public record Arrival(
            List<PortInfo> ports,
            boolean looked,
            Optional<Source> source,
            SourceOptions options,
            Optional<Instrument> instrument,
            boolean sure,
            List<String> remarks,
            String trouble) {
        /** Copies the lists. */
        public Arrival {
            ports = List.copyOf(ports);
            remarks = List.copyOf(remarks);
        }

        Arrival with(List<PortInfo> found) {
            return new Arrival(found, true, source, options, instrument, sure, remarks, trouble);
        }

        Arrival opening(Source chosen, SourceOptions how) {
            return new Arrival(ports, looked, Optional.of(chosen), how, Optional.empty(), false, List.of(), "");
        }

        Arrival at(SourceOptions how) {
            return new Arrival(ports, looked, source, how, instrument, sure, remarks, trouble);
        }

        Arrival closed() {
            return new Arrival(ports, looked, Optional.empty(), options, Optional.empty(), false, List.of(), trouble);
        }

        Arrival knowing(Instrument known, boolean certain, List<String> why) {
            return new Arrival(ports, looked, source, options, Optional.of(known), certain, why, trouble);
        }

        Arrival troubled(String words) {
            return new Arrival(ports, looked, source, options, instrument, sure, remarks, words);
        }
    }

    /**
     * The rooms, and the one that is worked on.
     *
     * @param kept rooms, by name
     * @param name of the next room that is made
     * @param profile that is worked on; empty until one is loaded or made
     * @param unsaved whether it differs from its file
     * @param news what became of the last load or save, in words
     * @param trouble what went wrong, in words with what to do; empty when nothing did
     * @param tuning name of the one of its tunings that is worked on; the first where it has none of that name
     * @param look a kept room that is looked at more closely
     */
    public record Keeping(
            List<KeptRoom> kept,
            String name,
            Optional<RoomProfile> profile,
            boolean unsaved,
            String news,
            String trouble,
            String tuning,
            Optional<RoomLook> look) {
        /** Copies the list. */
        public Keeping {
            kept = List.copyOf(kept);
        }

        /** Nothing is looked at more closely, and the first tuning is worked on. */
        public Keeping(
                List<KeptRoom> kept,
                String name,
                Optional<RoomProfile> profile,
                boolean unsaved,
                String news,
                String trouble) {
            this(kept, name, profile, unsaved, news, trouble, "", Optional.empty());
        }

        /** Names of the rooms that are kept. */
        public List<String> rooms() {
            return kept.stream().map(KeptRoom::name).toList();
        }

        /** Name of the room that is worked on; empty where there is none. */
        public String held() {
            return profile.map(room -> room.room().name()).orElse("");
        }

        /** The tuning that is worked on; empty where there is no room. */
        public Optional<Tuning> edited() {
            return profile.map(room -> room.tunings().stream()
                    .filter(each -> each.name().equals(tuning))
                    .findFirst()
                    .orElse(room.tunings().get(0)));
        }

        Keeping listing(List<KeptRoom> all) {
            return new Keeping(all, name, profile, unsaved, news, trouble, tuning, look);
        }

        Keeping named(String other) {
            return new Keeping(kept, other, profile, unsaved, news, "", tuning, look);
        }

        Keeping holding(RoomProfile other, boolean changed, String words) {
            return new Keeping(kept, other.room().name(), Optional.of(other), changed, words, "", tuning, look);
        }

        Keeping editing(String one) {
            return new Keeping(kept, name, profile, unsaved, news, "", one, look);
        }

        Keeping looking(Optional<RoomLook> closer) {
            return new Keeping(kept, name, profile, unsaved, "", "", tuning, closer);
        }

        Keeping seeing(RoomLook anew) {
            return new Keeping(kept, name, profile, unsaved, news, trouble, tuning, Optional.of(anew));
        }

        Keeping told(String words) {
            return new Keeping(kept, name, profile, unsaved, words, "", tuning, look);
        }

        Keeping troubled(String words) {
            return new Keeping(kept, name, profile, unsaved, "", words, tuning, look);
        }
    }

    /**
     * A kept room that is looked at more closely.
     *
     * @param history what it is and was
     * @param compared what it is compared with; empty where it is not
     */
    public record RoomLook(RoomHistory history, Optional<Compared> compared) {}

    /**
     * What differs between two rooms, or two versions of one.
     *
     * @param from the first, in words
     * @param to the second, in words
     * @param comparison from the first to the second
     * @param version the earlier version that is the first; empty where it is another room
     */
    public record Compared(String from, String to, RoomComparison comparison, Optional<Integer> version) {}

    /** What holds are taken for. */
    public enum Purpose {
        /** A room from nothing. */
        FRESH,
        /** Ends and light of the room that is there; how the sensors respond is kept. */
        AGAIN,
        /** The open light of the room that is there. */
        LIGHT,
        /** To see whether the room still fits. */
        CHECK,
        /** Ends and light again, and then ten unaided reaches. */
        AIM
    }

    /**
     * Holds that are being taken.
     *
     * @param purpose what for
     * @param plan which
     * @param rules when a hold counts
     * @param instrument with which
     * @param air in which
     * @param afterEvent number of the last event before they began
     */
    public record Task(
            Purpose purpose, CalibrationPlan plan, HoldRules rules, Instrument instrument, Air air, long afterEvent) {}

    /**
     * What a sound check came to.
     *
     * @param venue verdict and lines
     * @param seconds from the first prompt to the verdict; 0 where nothing had to be held
     */
    public record Checked(VenueCheck venue, double seconds) {}

    /**
     * Holds that are being taken, and what came of the last ones.
     *
     * @param task empty when none are
     * @param refusals why the last ones made no room; empty when they did
     * @param check what they say of the room, where it was checked
     * @param trouble why they could not be taken; empty when they could
     * @param told what they made of it, in words; empty where they made nothing
     */
    public record Measuring(
            Optional<Task> task, List<String> refusals, Optional<Checked> check, String trouble, List<String> told) {
        /** Copies the lists. */
        public Measuring {
            refusals = List.copyOf(refusals);
            told = List.copyOf(told);
        }

        /** Nothing is told. */
        public Measuring(Optional<Task> task, List<String> refusals, Optional<Checked> check, String trouble) {
            this(task, refusals, check, trouble, List.of());
        }

        static Measuring nothing() {
            return new Measuring(Optional.empty(), List.of(), Optional.empty(), "");
        }

        static Measuring told(List<String> words) {
            return new Measuring(Optional.empty(), List.of(), Optional.empty(), "", words);
        }
    }

    /**
     * Where sound goes.
     *
     * @param wanted targets of the room, or of the next one that is made
     * @param setting how the desk is set while it plays; empty when it does not
     * @param targets how those that are open stand
     * @param trying whether the sound for trying runs
     * @param tried whether it has run to its end once
     * @param trouble what went wrong, in words with what to do; empty when nothing did
     */
    public record Sounding(
            List<SendTarget> wanted,
            Optional<PlayDesk.Setting> setting,
            List<TargetStatus> targets,
            boolean trying,
            boolean tried,
            String trouble) {
        /** Copies the lists. */
        public Sounding {
            wanted = List.copyOf(wanted);
            targets = List.copyOf(targets);
        }

        Sounding to(List<SendTarget> others) {
            return new Sounding(others, setting, targets, trying, tried, "");
        }

        Sounding standing(Optional<PlayDesk.Setting> now, List<TargetStatus> status) {
            return new Sounding(wanted, now, status, trying, tried, trouble);
        }

        Sounding trying(boolean on, boolean once, List<TargetStatus> status) {
            return new Sounding(wanted, setting, status, on, once, trouble);
        }

        Sounding troubled(String words) {
            return new Sounding(wanted, setting, targets, trying, tried, words);
        }
    }

    /**
     * What a room can hold; worked out meanwhile, so that it may speak of the room as it was before.
     *
     * @param of the very room that it speaks of; empty where there is none
     * @param tuning name of the tuning that it speaks of
     * @param advice what the room holds, in words
     * @param warning what the tuning asks too much of; empty when it does not
     * @param feel how steady and how quick it is, in words
     * @param measured what was measured and what it can promise, a sentence each
     */
    public record Thought(
            Optional<RoomProfile> of,
            String tuning,
            String advice,
            String warning,
            String feel,
            List<String> measured) {
        /** Copies the list. */
        public Thought {
            measured = List.copyOf(measured);
        }

        /** Nothing was worked out yet. */
        public static Thought none() {
            return new Thought(Optional.empty(), "", "", "", "", List.of());
        }

        /** Whether it speaks of this room and tuning, and not of them as they were before. */
        public boolean speaksOf(RoomProfile profile, Tuning one) {
            return of.equals(Optional.of(profile)) && tuning.equals(one.name());
        }
    }

    EveningView with(Thought other) {
        return new EveningView(doing, arrival, keeping, measuring, sounding, other, snapshot, taking, surveyed);
    }

    EveningView doing(String words) {
        return new EveningView(words, arrival, keeping, measuring, sounding, thought, snapshot, taking, surveyed);
    }

    EveningView with(Arrival other) {
        return new EveningView(doing, other, keeping, measuring, sounding, thought, snapshot, taking, surveyed);
    }

    EveningView with(Keeping other) {
        return new EveningView(doing, arrival, other, measuring, sounding, thought, snapshot, taking, surveyed);
    }

    EveningView with(Measuring other) {
        return new EveningView(doing, arrival, keeping, other, sounding, thought, snapshot, taking, surveyed);
    }

    EveningView with(Sounding other) {
        return new EveningView(doing, arrival, keeping, measuring, other, thought, snapshot, taking, surveyed);
    }

    EveningView with(Optional<Snapshot> other) {
        return new EveningView(doing, arrival, keeping, measuring, sounding, thought, other, taking, surveyed);
    }

    EveningView with(Taking other) {
        return new EveningView(doing, arrival, keeping, measuring, sounding, thought, snapshot, other, surveyed);
    }

    EveningView with(Surveyed other) {
        return new EveningView(doing, arrival, keeping, measuring, sounding, thought, snapshot, taking, other);
    }
}
