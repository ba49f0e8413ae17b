package handspan.show.chart;

import handspan.live.path.HandsNow;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.music.level.LevelCurve;
import handspan.music.send.SoundFrame;
import handspan.number.units.Decibels;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * The level curve with the hand that plays on it: a dot where the hand is, on the curve, and a line across at the level
 * that is sent, which is lower while a sound rises, fades or is closed.
 */
public final class LiveLevelChart extends OverStill {
    private static final double SAME_DB = 0.05;

    private RoomProfile room;
    private Seen seen = Seen.NOTHING;
    private long version;
    private long edition;

    /**
     * What is shown of the hand.
     *
     * @param hand whether one is there
     * @param place01 its place in the zone; NaN where none has been yet
     * @param curveDb what the curve gives there; negative infinity below the quiet end
     * @param sentDb what is sent; negative infinity where nothing sounds
     */
    record Seen(boolean hand, double place01, double curveDb, double sentDb) {
        static final Seen NOTHING = new Seen(false, Double.NaN, Double.NaN, Double.NEGATIVE_INFINITY);

        boolean sounds() {
            return !Double.isInfinite(sentDb);
        }
    }

    /** The curve of a room, no hand on it yet. */
    public LiveLevelChart(RoomProfile room) {
        this.room = room;
    }

    @Override
    public String name() {
        return "How loud the level hand plays in " + room.room().name();
    }

    @Override
    public String about() {
        return "the place of the level hand against the level that is sent, in dB below full and as gain";
    }

    @Override
    public String words() {
        String sent = seen.sounds() ? "sent " + SoundWords.db(seen.sentDb) : "silent";
        HandSetup hand = room.room().level();
        if (hand == null) {
            return sent;
        }
        return seen.hand ? Across.of(hand).words(across(hand)) + ", " + sent : "no level hand, " + sent;
    }

    @Override
    String headWords() {
        return seen.hand ? "" : words();
    }

    @Override
    public long version() {
        return version;
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        Seen now = Seen.NOTHING;
        HandSetup hand = room.room().level();
        ActivityView.Playing playing = snapshot.activity().played().orElse(null);
        if (playing != null) {
            now = seen(playing.hands(), playing.frame().orElse(null));
        } else if (hand != null) {
            now = seen(WatchedHand.place01(room.room(), hand, snapshot), Double.NEGATIVE_INFINITY);
        }
        version += now.equals(seen) ? 0 : 1;
        seen = now;
    }

    /** Draws another curve of the same room from now on. */
    public void use(LevelCurve curve) {
        if (!curve.equals(room.level())) {
            room = room.with(curve);
            edition++;
            version++;
        }
    }

    private Seen seen(HandsNow hands, @Nullable SoundFrame frame) {
        double sentDb = frame == null ? Double.NEGATIVE_INFINITY : db(frame.gain01());
        return seen(hands.level() ? hands.levelPlace01() : Double.NaN, sentDb);
    }

    private Seen seen(double place01, double sentDb) {
        boolean hand = !Double.isNaN(place01);
        return new Seen(hand, place01, hand ? db(room.level().gain01(place01)) : Double.NaN, sentDb);
    }

    private static double db(double gain01) {
        return gain01 > 0 ? Decibels.of(gain01) : Double.NEGATIVE_INFINITY;
    }

    /** Where the hand is on the axis. */
    private double across(HandSetup hand) {
        return Across.of(hand).zone(hand).mm(seen.place01);
    }

    /** What is shown of the hand. */
    Seen seen() {
        return seen;
    }

    @Override
    long edition() {
        return edition;
    }

    @Override
    JFreeChart still(Theme theme) {
        return LevelCurveChart.of(room, theme);
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        StillChart.Pane pane = chart.pane(0);
        if (seen.sounds()) {
            double y = pane.heldY(seen.sentDb);
            g2.setPaint(theme.live());
            g2.setStroke(ChartSheet.THIN);
            g2.draw(new Line2D.Double(pane.area().getMinX(), y, pane.area().getMaxX(), y));
        }
        HandSetup hand = room.room().level();
        if (seen.hand && hand != null) {
            double x = pane.heldX(across(hand));
            double y = pane.heldY(Math.max(pane.up().getLowerBound(), seen.curveDb));
            boolean reached = seen.sounds() && Math.abs(seen.sentDb - seen.curveDb) < SAME_DB;
            hand(g2, pane, x, y, reached, theme);
            beside(g2, pane, x, y, !room.level().loudFar(), words(), theme);
        }
    }
}
