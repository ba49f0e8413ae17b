package handspan.show.window;

import com.formdev.flatlaf.FlatClientProperties;
import handspan.show.scene.Block;
import handspan.show.scene.Offer;
import handspan.show.scene.Wish;
import java.awt.Color;
import java.awt.Font;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.ButtonModel;
import javax.swing.JButton;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ChangeListener;
import org.jspecify.annotations.Nullable;

/** What can be done now: buttons that show their keys. */
final class OffersPane extends FlowingPane implements BlockPane {
    private static final long serialVersionUID = 1;
    private static final int DOUBLE_CLICK_MS = 700;

    private final transient Looks looks;
    private final transient Consumer<Wish> wishes;
    private transient Block.Offers shown = new Block.Offers(List.of());
    private final transient List<JButton> buttons = new ArrayList<>();

    OffersPane(Looks looks, Consumer<Wish> wishes) {
        super(looks.px(10));
        this.looks = looks;
        this.wishes = wishes;
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Offers;
    }

    @Override
    public void show(Block block) {
        if (!(block instanceof Block.Offers next) || next.equals(shown)) {
            return;
        }
        shown = next;
        while (buttons.size() > next.offers().size()) {
            remove(buttons.remove(buttons.size() - 1));
        }
        for (int i = 0; i < next.offers().size(); i++) {
            if (i == buttons.size()) {
                buttons.add(button(i));
            }
            show(buttons.get(i), next.offers().get(i));
        }
        revalidate();
        repaint();
    }

    private JButton button(int index) {
        JButton button = new JButton();
        button.setMargin(new Insets(looks.px(4), looks.px(12), looks.px(4), looks.px(12)));
        Press press =
                new Press(button.getModel(), () -> shown.offers().get(index).wish());
        button.getModel().addChangeListener(press);
        button.addActionListener(event -> press.meant().ifPresent(wishes));
        add(button);
        return button;
    }

    /** A key that does not fit beside its words is left to the tip. */
    @Override
    public int heightFor(int widthPx) {
        fit(widthPx);
        return super.heightFor(widthPx);
    }

    @Override
    public void doLayout() {
        fit(getWidth());
        super.doLayout();
    }

    private void fit(int widthPx) {
        for (int i = 0; i < buttons.size(); i++) {
            JButton button = buttons.get(i);
            Offer offer = shown.offers().get(i);
            String words = text(offer);
            if (!button.getText().equals(words)) {
                button.setText(words);
            }
            if (button.getPreferredSize().width > widthPx) {
                button.setText(offer.words());
            }
        }
    }

    private static String text(Offer offer) {
        String key = offer.keyWords();
        return key.isEmpty() ? offer.words() : offer.words() + "   " + key;
    }

    /** What comes next stands out; so does what makes sound, in another colour. */
    private @Nullable String style(Offer offer) {
        if (offer.weight() == Offer.Weight.PLAIN || !offer.isPossible()) {
            return null;
        }
        boolean next = offer.weight() == Offer.Weight.NEXT;
        return String.format(
                Locale.ROOT,
                "background: #%06x; foreground: #%06x",
                rgb(looks.ink(next ? Ink.FILL : Ink.LOOK)),
                rgb(looks.ink(next ? Ink.ON_FILL : Ink.ON_LOOK)));
    }

    private static int rgb(Color colour) {
        return colour.getRGB() & 0xFFFFFF;
    }

    private void show(JButton button, Offer offer) {
        button.setText(text(offer));
        button.setFont(looks.font(offer.weight() == Offer.Weight.PLAIN ? Font.PLAIN : Font.BOLD, Letters.CONTROL));
        button.putClientProperty(FlatClientProperties.STYLE, style(offer));
        button.setEnabled(offer.isPossible());
        // the keyboard must not wait on what makes sound: a blank would press it
        boolean sounds = offer.weight() == Offer.Weight.SOUND;
        button.setFocusable(!sounds);
        // and the second of two clicks was meant for what stood here before; see also Press
        button.setMultiClickThreshhold(sounds ? DOUBLE_CLICK_MS : 0);
        button.setToolTipText(
                offer.isPossible() ? offer.tip() + "  " + offer.keyWords() : offer.words() + ": " + offer.whyNot());
        button.getAccessibleContext().setAccessibleName(offer.words());
        button.getAccessibleContext().setAccessibleDescription(offer.isPossible() ? offer.tip() : offer.whyNot());
    }

    /** What a button offered when it went down: it may offer something else by the time it comes up. */
    private static final class Press implements ChangeListener {
        private final ButtonModel model;
        private final Supplier<Wish> offered;
        private @Nullable Wish whenDown;

        Press(ButtonModel model, Supplier<Wish> offered) {
            this.model = model;
            this.offered = offered;
        }

        @Override
        public void stateChanged(ChangeEvent event) {
            if (!model.isPressed()) {
                whenDown = null;
            } else if (whenDown == null) {
                whenDown = offered.get();
            }
        }

        /** What is still offered of what was pressed. */
        Optional<Wish> meant() {
            return Optional.ofNullable(whenDown).filter(offered.get()::equals);
        }
    }
}
