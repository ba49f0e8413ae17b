package handspan.bench;

import com.sun.management.OperatingSystemMXBean;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Snapshot;
import handspan.music.send.NetworkTarget;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.wiring.Ensemble;
import handspan.wiring.Listening;
import handspan.wiring.Member;
import handspan.wiring.OpenSource;
import handspan.wiring.Seat;
import handspan.wiring.SessionLog;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.Targets;
import handspan.wiring.WaysOut;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Many instruments in this one process, each a recording that comes by the clock and plays into a UDP port, as
 * {@code play} with several rooms wires and follows them. Tells on standard error what it took.
 */
public final class ManyInstruments {
    private ManyInstruments() {}

    /**
     * Plays: count of instruments, recording without times, lines a second, UDP port, seconds before, seconds measured.
     */
    public static void main(String[] words) throws Exception {
        int count = Integer.parseInt(words[0]);
        Source source = Source.parse("take:" + words[1]);
        double ratePerS = Double.parseDouble(words[2]);
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.of(ratePerS), 1, true);
        RoomProfile profile = room(ratePerS, Integer.parseInt(words[3]));
        List<Member> members = new ArrayList<>();
        SessionLog log = new SessionLog(Path.of(words[1]).resolveSibling("log"), "bench");
        for (int i = 1; i <= count; i++) {
            Seat seat = new Seat(
                    i,
                    "instrument " + i,
                    profile,
                    profile.tunings(),
                    profile.tunings().get(0),
                    PathSettings.USUAL.muted(false));
            WaysOut out = new WaysOut(Targets.open(profile.send()), Listening.open(null, false, true), null);
            members.add(new Member(
                    seat,
                    source,
                    out,
                    null,
                    () -> OpenSource.open(
                            source, options, profile.room().instrument().shape(), log)));
        }
        Ensemble ensemble = Ensemble.of(members, true);
        ensemble.start();
        long warmNanos = Math.round(1e9 * Double.parseDouble(words[4]));
        ensemble.follow(() -> ensemble.seconds() * 1e9 < warmNanos);
        measure(ensemble, Double.parseDouble(words[5]));
        System.exit(0);
    }

    private static RoomProfile room(double ratePerS, int port) throws Exception {
        RoomProfile kept = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
        Room room = kept.room();
        Room quicker = new Room(
                room.name(),
                room.calibratedAt(),
                room.instrument(),
                room.air(),
                ratePerS,
                room.pitch(),
                room.level(),
                room.holds());
        return new RoomProfile(
                quicker,
                kept.tunings(),
                kept.level(),
                kept.send().to(List.of(new NetworkTarget(NetworkTarget.Protocol.UDP, "127.0.0.1", port))));
    }

    private static void measure(Ensemble ensemble, double longSeconds) {
        List<Member> members = ensemble.members();
        var system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long readings = readings(members);
        long frames = frames(members);
        long cpuNanos = system.getProcessCpuTime();
        long startNanos = System.nanoTime();
        double fromSeconds = ensemble.seconds();
        ensemble.follow(() -> ensemble.seconds() - fromSeconds < longSeconds);
        cpuNanos = system.getProcessCpuTime() - cpuNanos;
        double seconds = (System.nanoTime() - startNanos) / 1e9;
        tell("cpu01", cpuNanos / 1e9 / seconds);
        tell("readingsPerS", (readings(members) - readings) / seconds);
        tell("framesPerS", (frames(members) - frames) / seconds);
        tell("threads", ManagementFactory.getThreadMXBean().getThreadCount());
        System.gc();
        var heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage();
        tell("usedMb", heap.getUsed() / 1e6);
        tell("heapMb", heap.getCommitted() / 1e6);
    }

    private static long readings(List<Member> members) {
        return members.stream()
                .flatMap(member -> member.snapshot().stream())
                .mapToLong(Snapshot::readings)
                .sum();
    }

    private static long frames(List<Member> members) {
        return members.stream()
                .flatMap(member -> member.out().status().stream())
                .mapToLong(TargetStatus::sent)
                .sum();
    }

    private static void tell(String key, double value) {
        System.err.println(key + "=" + value);
    }
}
