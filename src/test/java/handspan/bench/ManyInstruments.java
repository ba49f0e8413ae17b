package handspan.bench;

import com.sun.management.OperatingSystemMXBean;
import handspan.live.path.FrameTarget;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.music.send.NetworkTarget;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.Targets;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Many instruments in this one process, each a recording that comes by the clock and plays into a UDP port, as
 * {@code play} wires them. Tells on standard error what it took.
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
        List<Rig> rigs = new ArrayList<>();
        List<Targets> targets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Targets opened = Targets.open(profile.send());
            targets.add(opened);
            Rig rig = Rigs.open(source, options, profile.room().instrument().shape(), opened.all(), null);
            rigs.add(rig);
            rig.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
            Thread.sleep(5);
        }
        Thread.sleep(Math.round(1000 * Double.parseDouble(words[4])));
        measure(rigs, targets, Math.round(1000 * Double.parseDouble(words[5])));
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

    private static void measure(List<Rig> rigs, List<Targets> targets, long millis) throws InterruptedException {
        var system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long readings = readings(rigs);
        long frames = frames(targets);
        long cpuNanos = system.getProcessCpuTime();
        long startNanos = System.nanoTime();
        Thread.sleep(millis);
        cpuNanos = system.getProcessCpuTime() - cpuNanos;
        double seconds = (System.nanoTime() - startNanos) / 1e9;
        tell("cpu01", cpuNanos / 1e9 / seconds);
        tell("readingsPerS", (readings(rigs) - readings) / seconds);
        tell("framesPerS", (frames(targets) - frames) / seconds);
        tell("threads", ManagementFactory.getThreadMXBean().getThreadCount());
        System.gc();
        var heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage();
        tell("usedMb", heap.getUsed() / 1e6);
        tell("heapMb", heap.getCommitted() / 1e6);
    }

    private static long readings(List<Rig> rigs) {
        return rigs.stream().mapToLong(rig -> rig.snapshot().readings()).sum();
    }

    private static long frames(List<Targets> targets) {
        return targets.stream()
                .flatMap(each -> each.all().stream())
                .map(FrameTarget::status)
                .mapToLong(status -> status.sent())
                .sum();
    }

    private static void tell(String key, double value) {
        System.err.println(key + "=" + value);
    }
}
