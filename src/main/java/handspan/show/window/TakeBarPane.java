package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Moments;
import handspan.show.scene.Wish;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** A recording along its time: a button to let it stand, a track to take it elsewhere, its place in minutes. */
final class TakeBarPane extends JPanel implements BlockPane {
    private static final long serialVersionUID = 1;
    private static final int GAP_PX = 14;
    private static final int BUTTON_PX = 104;
    private static final String WIDEST = "8:88:88 of 8:88:88 min:s";

    private final JButton button = new JButton("Go on");
    private final TakeTrack track;
    private final JLabel place = new JLabel();
    private transient Block.TakeBar shown = new Block.TakeBar(0, OptionalDouble.empty(), false, List.of());

    TakeBarPane(Looks looks, Consumer<Wish> wishes) {
        super(new BorderLayout(looks.px(GAP_PX), 0));
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(looks.px(4), 0, looks.px(4), 0));
        this.track = new TakeTrack(looks, wishes);
        button.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        button.addActionListener(event -> wishes.accept(Wish.Plain.TURN_TAKE));
        // the keyboard must not wait on what can make sound: a blank would press it
        button.setFocusable(false);
        place.setFont(looks.font(Font.BOLD, Letters.CONTROL));
        place.setForeground(looks.ink(Ink.TEXT));
        place.setHorizontalAlignment(SwingConstants.RIGHT);
        // of one width whatever it says: the track must not change under the mouse
        place.setPreferredSize(new Dimension(
                place.getFontMetrics(place.getFont()).stringWidth(WIDEST), button.getPreferredSize().height));
        place.setToolTipText("place in the recording and its length, minutes:seconds");
        JPanel centred = new JPanel(new GridBagLayout());
        centred.setOpaque(false);
        centred.add(button);
        add(centred, BorderLayout.WEST);
        add(track, BorderLayout.CENTER);
        add(place, BorderLayout.EAST);
        button.setPreferredSize(new Dimension(looks.px(BUTTON_PX), button.getPreferredSize().height));
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.TakeBar;
    }

    @Override
    public void show(Block block) {
        if (!(block instanceof Block.TakeBar next)) {
            return;
        }
        shown = next;
        track.show(next);
        String words = next.running() ? "Pause" : "Go on";
        if (!words.equals(button.getText()) || button.getToolTipText() == null) {
            button.setText(words);
            button.setToolTipText((next.running() ? "fades, and lets the recording stand" : "lets the recording go on")
                    + " (Ctrl+G)");
            button.getAccessibleContext().setAccessibleName(words + ", recording");
        }
        String at = track.isHeld() ? Moments.words(track.placeS()) + "  " : shown.words() + " min:s";
        if (!at.equals(place.getText())) {
            place.setText(at);
        }
    }

    TakeTrack track() {
        return track;
    }
}
