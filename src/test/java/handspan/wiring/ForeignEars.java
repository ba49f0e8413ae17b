package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.music.send.Packing;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.io.BufferedWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Plays the simulated hall to receivers that nobody here wrote, and writes down the numbers of each frame as text, so
 * that a script can hold what they have decoded against them. Arguments: FILE SECONDS PACKING=TARGET..., with PACKING
 * {@code bundled} or {@code separate}.
 */
public final class ForeignEars {
    private static final Path PROFILES = Path.of("profiles");
    private static final long CONNECT_MS = 500;

    private ForeignEars() {}

    /** Keeps each frame as a line of JSON. */
    private static final class Truth implements FrameTarget {
        private final List<String> lines = new ArrayList<>();

        @Override
        public synchronized void send(SoundFrame frame, boolean withState) {
            lines.add("{\"pitchHz\":" + frame.pitchHz() + ",\"key\":" + frame.key() + ",\"cents\":"
                    + frame.centsFromKey() + ",\"degree\":" + frame.degree() + ",\"octave\":" + frame.octave()
                    + ",\"gain01\":" + frame.gain01() + ",\"hand\":" + frame.hand() + ",\"pitchPlace01\":"
                    + frame.pitchPlace01() + ",\"levelPlace01\":" + frame.levelPlace01() + ",\"state\":\""
                    + frame.state().word() + "\",\"withState\":" + withState + "}");
        }

        synchronized List<String> lines() {
            return List.copyOf(lines);
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("truth", lines.size(), 0, 0, "");
        }

        @Override
        public void close() {}
    }

    /** Plays. */
    public static void main(String[] args) throws Exception {
        RoomProfile room = new ProfileFolder(PROFILES).load("saltmill-hall");
        long seconds = Long.parseLong(args[1]);
        Truth truth = new Truth();
        List<FrameTarget> all = new ArrayList<>(List.of(truth));
        List<Targets> opened = new ArrayList<>();
        for (String arg : List.of(args).subList(2, args.length)) {
            String[] parts = arg.split("=", 2);
            SendPlan plan = SendPlan.byDefault(room.room().instrument().name(), List.of(SendTarget.parse(parts[1])))
                    .with(Packing.USUAL.bundled(parts[0].equals("bundled")));
            Targets targets = Targets.open(plan);
            opened.add(targets);
            all.addAll(targets.all());
        }
        Thread.sleep(CONNECT_MS);
        try (Rig rig = Rigs.open(
                Source.parse("sim:hall"),
                SourceOptions.USUAL,
                room.room().instrument().shape(),
                all,
                null)) {
            rig.submit(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)));
            long startNanos = rig.snapshot().timeNanos();
            rig.follow(snapshot -> snapshot.timeNanos() - startNanos < seconds * Nanos.PER_SECOND);
        }
        opened.forEach(Targets::close);
        try (BufferedWriter out = Files.newBufferedWriter(Path.of(args[0]), StandardCharsets.UTF_8)) {
            out.write("{\"name\":\"" + room.room().instrument().name() + "\"}\n");
            for (String line : truth.lines()) {
                out.write(line + "\n");
            }
        }
    }
}
