package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Wish;
import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Things to fill in or to choose, side by side. What is being written is left alone until it is given. */
final class FieldsPane extends FlowingPane implements BlockPane {
    private static final long serialVersionUID = 1;
    private static final int SHORT_COLUMNS = 5;
    private static final int HAND_COLUMNS = 16;
    private static final int LONG_COLUMNS = 24;

    private final transient Looks looks;
    private final transient Consumer<Wish> wishes;
    private transient Block.Fields shown = new Block.Fields(List.of());
    private final transient List<JComponent> inputs = new ArrayList<>();
    private boolean filling;

    FieldsPane(Looks looks, Consumer<Wish> wishes) {
        super(looks.px(24));
        this.looks = looks;
        this.wishes = wishes;
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Fields next && (shown.fields().isEmpty() || isSameForm(next));
    }

    private boolean isSameForm(Block.Fields next) {
        return next.fields().stream()
                        .map(Block.Field::ask)
                        .toList()
                        .equals(shown.fields().stream().map(Block.Field::ask).toList())
                && next.fields().stream()
                        .map(Block.Field::choices)
                        .toList()
                        .equals(shown.fields().stream()
                                .map(Block.Field::choices)
                                .toList());
    }

    @Override
    public void show(Block block) {
        if (!(block instanceof Block.Fields next) || next.equals(shown)) {
            return;
        }
        if (inputs.isEmpty()) {
            next.fields().forEach(this::add);
        }
        shown = next;
        filling = true;
        for (int i = 0; i < next.fields().size(); i++) {
            fill(inputs.get(i), next.fields().get(i).value());
        }
        filling = false;
    }

    private static void fill(JComponent input, String value) {
        if (input instanceof JComboBox<?> box) {
            box.setSelectedItem(value);
        } else if (input instanceof JTextField text && !text.isFocusOwner()) {
            text.setText(value);
        }
    }

    private void add(Block.Field field) {
        JPanel pair = new JPanel(new BorderLayout(looks.px(8), 0));
        pair.setOpaque(false);
        JLabel label = new JLabel(field.label());
        label.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        JComponent input = field.choices().isEmpty() ? written(field) : chosen(field);
        input.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        input.setToolTipText(field.tip());
        input.getAccessibleContext()
                .setAccessibleName(field.unit().isEmpty() ? field.label() : field.label() + ", " + field.unit());
        label.setLabelFor(input);
        pair.add(label, BorderLayout.WEST);
        pair.add(input, BorderLayout.CENTER);
        if (!field.unit().isEmpty()) {
            JLabel unit = new JLabel(field.unit());
            unit.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
            pair.add(unit, BorderLayout.EAST);
        }
        inputs.add(input);
        add(pair);
    }

    private JComponent written(Block.Field field) {
        JTextField text = new JTextField(field.value(), columns(field));
        Runnable give = () -> {
            String before = shown.fields().stream()
                    .filter(now -> now.ask() == field.ask())
                    .map(Block.Field::value)
                    .findFirst()
                    .orElse("");
            if (!filling && !text.getText().equals(before)) {
                wishes.accept(new Wish.Say(field.ask(), text.getText()));
            }
        };
        text.addActionListener(event -> give.run());
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                give.run();
            }
        });
        return text;
    }

    private static int columns(Block.Field field) {
        return switch (field.ask()) {
            case SOURCE, TARGETS, RULER_MM, ROOM_NAME, NOTES_BY_EAR, STEPS -> LONG_COLUMNS;
            case PITCH_HAND, LEVEL_HAND -> HAND_COLUMNS;
            default -> SHORT_COLUMNS;
        };
    }

    private JComponent chosen(Block.Field field) {
        JComboBox<String> box = new JComboBox<>(field.choices().toArray(new String[0]));
        box.setMaximumRowCount(16);
        box.addActionListener(event -> {
            if (!filling && box.getSelectedItem() instanceof String choice) {
                wishes.accept(new Wish.Say(field.ask(), choice));
            }
        });
        return box;
    }
}
