package handspan.music.passage;

import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Passages made by hand: key over time, a moment every 5 ms. Invented. */
final class Played {
    private static final double STEP_S = 0.005;
    static final double GAIN01 = 0.25;

    private final List<Moment> moments = new ArrayList<>();
    private double nowS;

    /** A stretch of sound; its time begins at 0. */
    Played sounding(double seconds, DoubleUnaryOperator keyOfS) {
        return sounding(seconds, keyOfS, keyOfS);
    }

    Played sounding(double seconds, DoubleUnaryOperator soundOfS, DoubleUnaryOperator handOfS) {
        int count = (int) Math.round(seconds / STEP_S);
        for (int i = 0; i < count; i++) {
            double s = i * STEP_S;
            add(new Moment(time(s), soundOfS.applyAsDouble(s), handOfS.applyAsDouble(s), GAIN01, true, false));
        }
        nowS += count * STEP_S;
        return this;
    }

    Played note(double key, double seconds) {
        return sounding(seconds, s -> key);
    }

    Played glide(double from, double to, double seconds) {
        return sounding(seconds, s -> from + (to - from) * s / seconds);
    }

    Played away(double seconds, double key) {
        add(new Moment(time(0), key, key, 0, false, false));
        nowS += seconds;
        return this;
    }

    private void add(Moment moment) {
        moments.add(moment);
    }

    private long time(double s) {
        return Nanos.PER_SECOND + Nanos.ofSeconds(nowS + s);
    }

    List<Moment> moments() {
        return List.copyOf(moments);
    }
}
