package handspan.show.chart;

import handspan.live.path.HandsNow;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Direction;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Zone;
import handspan.room.budget.NoteChance;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * Where the notes lie, with the hand that plays on it: the cell it is in, and what it sounds, snapping and all. A
 * hollow dot is a hand that does not sound.
 */
public final class LiveLadderChart extends OverStill {
    private static final int CELL_ALPHA = 70;

    private final RoomProfile room;
    private final Across across;
    private final Zone zone;
    private final Aside aside;
    private Tuning tuning;
    private List<NoteChance> chances = List.of();
    private Seen seen = Seen.NOTHING;
    private long version;
    private long edition;

    /**
     * What is shown of the hand.
     *
     * @param hand whether one is there
     * @param place01 its place in the zone; NaN where none has been yet
     * @param key what it sounds, or would
     * @param sounds whether it is heard
     */
    record Seen(boolean hand, double place01, double key, boolean sounds) {
        static final Seen NOTHING = new Seen(false, Double.NaN, Double.NaN, false);
    }

    /**
     * The ladder of a room under one of its tunings, no hand on it yet.
     *
     * @param aside where it is worked out how likely each note is missed
     */
    public LiveLadderChart(RoomProfile room, Tuning tuning, Aside aside) {
        HandSetup hand = room.room().pitch();
        this.room = room;
        this.across = Across.of(hand);
        this.zone = across.zone(hand);
        this.tuning = tuning;
        this.aside = aside;
        workOut();
    }

    private void workOut() {
        Tuning meant = tuning;
        aside.workOut(() -> NoteChance.of(room.room(), meant, room.room().aim()), known -> {
            chances = List.copyOf(known);
            edition++;
            version++;
        });
    }

    @Override
    public String name() {
        return "Where the notes lie in " + room.room().name();
    }

    @Override
    public String about() {
        return "the distance of the pitch hand against the pitch that sounds, in note names and Hz; along the foot how"
                + " often each note is missed, in %";
    }

    @Override
    public String words() {
        return seen.hand ? handWords() : "no pitch hand";
    }

    @Override
    String headWords() {
        return seen.hand ? "" : words();
    }

    private String handWords() {
        return SoundWords.note(tuning, seen.key) + " at " + across.words(zone.mm(seen.place01))
                + (seen.sounds ? "" : ", silent");
    }

    @Override
    public long version() {
        return version;
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        Seen now = Seen.NOTHING;
        ActivityView.Playing playing = snapshot.activity().played().orElse(null);
        if (playing != null) {
            use(playing.tuning());
            now = seen(playing.hands(), playing.frame().orElse(null));
        } else {
            double place01 = WatchedHand.place01(room.room(), room.room().pitch(), snapshot);
            now = Double.isNaN(place01)
                    ? Seen.NOTHING
                    : new Seen(true, place01, SoundWords.keyAt(tuning, place01), false);
        }
        version += now.equals(seen) ? 0 : 1;
        seen = now;
    }

    /** Draws the ladder of another tuning from now on. */
    public void use(Tuning other) {
        if (!other.equals(tuning)) {
            tuning = other;
            chances = List.of();
            edition++;
            version++;
            workOut();
        }
    }

    private Seen seen(HandsNow hands, @Nullable SoundFrame frame) {
        if (frame != null && frame.gain01() > 0) {
            return new Seen(true, frame.pitchPlace01(), tuning.reference().key(frame.pitchHz()), true);
        }
        double place01 = hands.pitchPlace01();
        boolean hand = hands.pitch() && !Double.isNaN(place01);
        return hand ? new Seen(true, place01, SoundWords.keyAt(tuning, place01), false) : Seen.NOTHING;
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
        return PitchLadderChart.of(room, tuning, chances, theme);
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        if (!seen.hand) {
            return;
        }
        StillChart.Pane pane = chart.pane(0);
        cell(g2, pane, theme);
        double x = pane.heldX(zone.mm(seen.place01));
        double y = pane.heldY(seen.key);
        hand(g2, pane, x, y, seen.sounds, theme);
        beside(g2, pane, x, y, tuning.direction() == Direction.HIGH_NEAR, handWords(), theme);
    }

    /** The cell of the note that is meant. */
    private void cell(Graphics2D g2, StillChart.Pane pane, Theme theme) {
        ScaleLadder ladder = tuning.ladder();
        int note = ladder.nearest(seen.key - tuning.shiftKeys());
        double one = at(ladder.lowerBoundary(note));
        double other = at(ladder.upperBoundary(note));
        double from = pane.heldX(Math.min(one, other));
        double to = pane.heldX(Math.max(one, other));
        Color live = theme.live();
        g2.setPaint(new Color(live.getRed(), live.getGreen(), live.getBlue(), CELL_ALPHA));
        g2.fill(new Rectangle2D.Double(
                from, pane.area().getMinY(), to - from, pane.area().getHeight()));
    }

    /** Travel of a key number before transposition and trim, held to the zone. */
    private double at(double key) {
        double held = Math.max(tuning.curve().lowKey(), Math.min(tuning.curve().highKey(), key));
        return zone.mm(tuning.curve().place01(held));
    }
}
