package handspan.live.path;

import java.util.List;
import java.util.stream.LongStream;

/** Prints what is heard of hands that come and go; a tool for those who change presence. */
final class HandTrialTable {
    private static final int SEEDS = 60;

    private HandTrialTable() {}

    public static void main(String[] args) {
        System.out.printf(
                "%-12s %-9s %4s %4s | %6s %6s %6s %7s | %6s %6s %7s%n",
                "sensor", "way", "m/s", "from", "sweep", "after", "ms", "cent s", "slide", "ms", "cent s");
        for (HandTrial.Kind kind : List.of(HandTrial.Kind.FLIGHT, HandTrial.Kind.ECHO)) {
            for (HandTrial.Way way : HandTrial.Way.values()) {
                for (double mmPerS : new double[] {300, 700, 1500}) {
                    for (double mm : new double[] {300, 450}) {
                        row(kind, way, mm, mmPerS);
                    }
                }
            }
        }
        for (HandTrial.Kind kind : HandTrial.Kind.values()) {
            for (double beyondMm : new double[] {-60, 0, 10, 20}) {
                System.out.println(
                        kind + " glissando " + beyondMm + " " + PlayedTrial.glissando(kind, beyondMm, 3 * SEEDS));
            }
            System.out.println(kind + " still " + PlayedTrial.still(kind, SEEDS));
        }
    }

    private static void row(HandTrial.Kind kind, HandTrial.Way way, double mm, double mmPerS) {
        List<HandTrial.Left> left = LongStream.range(0, SEEDS)
                .mapToObj(seed -> new HandTrial(kind, seed)
                        .play(way.leaving(mm, mmPerS), 4)
                        .left())
                .toList();
        List<HandTrial.Came> came = LongStream.range(0, SEEDS)
                .mapToObj(seed -> new HandTrial(kind, seed)
                        .play(way.coming(mm, mmPerS), 4)
                        .came())
                .toList();
        System.out.printf(
                "%-12s %-9s %4.1f %4.0f | %6.0f %6.0f %6.0f %7.1f | %6.0f %6.0f %7.1f%n",
                kind,
                way,
                mmPerS / 1000,
                mm,
                left.stream().mapToDouble(HandTrial.Left::sweepCents).average().orElseThrow(),
                left.stream().mapToDouble(HandTrial.Left::afterCents).average().orElseThrow(),
                left.stream().mapToDouble(HandTrial.Left::silentMs).average().orElseThrow(),
                left.stream().mapToDouble(HandTrial.Left::centSeconds).average().orElseThrow(),
                came.stream().mapToDouble(HandTrial.Came::slideCents).average().orElseThrow(),
                came.stream().mapToDouble(HandTrial.Came::heardMs).average().orElseThrow(),
                came.stream().mapToDouble(HandTrial.Came::centSeconds).average().orElseThrow());
    }
}
