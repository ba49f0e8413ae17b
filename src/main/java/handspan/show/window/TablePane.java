package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Wish;
import java.awt.BorderLayout;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;

/** A table whose rows may be chosen by Enter or two clicks. */
final class TablePane extends JPanel implements BlockPane, Column.Growing {
    private static final long serialVersionUID = 1;
    private static final int ROW_PX = 28;
    private static final int EDGE_PX = 16;
    private static final int FEWEST_ROWS = 2;
    private static final int MOST_ROWS = 9;

    private final transient Looks looks;
    private final transient Consumer<Wish> wishes;
    private final Model model = new Model();
    private final JTable table = new Table(model);
    private transient List<Integer> widest = List.of();
    private transient Block.Table shown = new Block.Table("", List.of(), List.of());

    TablePane(Looks looks, Consumer<Wish> wishes) {
        super(new BorderLayout());
        setOpaque(false);
        this.looks = looks;
        this.wishes = wishes;
        table.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        table.getTableHeader().setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        table.getTableHeader().setReorderingAllowed(false);
        table.setRowHeight(looks.px(ROW_PX));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "choose");
        table.getActionMap().put("choose", new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                choose();
            }
        });
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    choose();
                }
            }
        });
        table.setBackground(looks.ink(Ink.RAISED));
        table.setForeground(looks.ink(Ink.TEXT));
        table.setSelectionForeground(looks.ink(Ink.TEXT));
        table.setIntercellSpacing(new Dimension(looks.px(8), 0));
        table.setFillsViewportHeight(true);
        JScrollPane scroll = new JScrollPane(table);
        scroll.addMouseWheelListener(event -> passOn(scroll, event));
        scroll.setColumnHeaderView(table.getTableHeader());
        add(scroll, BorderLayout.CENTER);
    }

    private void choose() {
        int row = table.getSelectedRow();
        if (row >= 0 && row < shown.rows().size()) {
            shown.rows().get(row).wish().ifPresent(wishes);
        }
    }

    JTable table() {
        return table;
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Table next
                && (shown.heads().isEmpty() || next.heads().equals(shown.heads()));
    }

    @Override
    public void show(Block block) {
        if (!(block instanceof Block.Table next) || next.equals(shown)) {
            return;
        }
        boolean heads = !next.heads().equals(shown.heads());
        boolean rows = next.rows().size() != shown.rows().size();
        int selected = stillSelected(next);
        shown = next;
        if (heads) {
            model.fireTableStructureChanged();
        } else if (rows) {
            model.fireTableDataChanged();
            revalidate();
        } else {
            model.fireTableRowsUpdated(0, Math.max(0, next.rows().size() - 1));
        }
        // numbers that change must not make columns dance: within a table they only grow
        List<Integer> longest = longest(next, heads ? List.of() : widest);
        if (heads || !longest.equals(widest)) {
            widest = longest;
            widths();
        }
        boolean choosing = next.rows().stream().anyMatch(row -> row.wish().isPresent());
        if (choosing && !next.rows().isEmpty()) {
            table.setRowSelectionInterval(selected, selected);
        }
        table.setFocusable(choosing || next.rows().size() > MOST_ROWS);
        table.getAccessibleContext().setAccessibleName(next.name());
    }

    /** Where the row is that was selected: others may have come above it. */
    private int stillSelected(Block.Table next) {
        int row = Math.max(0, table.getSelectedRow());
        if (row >= shown.rows().size()) {
            return 0;
        }
        String name = shown.rows().get(row).cells().get(0);
        List<String> names = next.rows().stream().map(one -> one.cells().get(0)).toList();
        if (row < names.size() && names.get(row).equals(name)) {
            return row;
        }
        return names.contains(name) ? names.indexOf(name) : Math.min(row, Math.max(0, names.size() - 1));
    }

    /** Width of the longest cell of each column, now or before, px. */
    private List<Integer> longest(Block.Table shown, List<Integer> before) {
        FontMetrics metrics = table.getFontMetrics(table.getFont());
        List<Integer> longest = new ArrayList<>();
        for (int column = 0; column < shown.heads().size(); column++) {
            int head = metrics.stringWidth(shown.heads().get(column));
            int most = column < before.size() ? Math.max(head, before.get(column)) : head;
            for (Block.Row row : shown.rows()) {
                most = Math.max(most, metrics.stringWidth(row.cells().get(column)));
            }
            longest.add(most);
        }
        return longest;
    }

    /** Columns as wide as their longest cell asks for, in proportion. */
    private void widths() {
        for (int column = 0; column < widest.size(); column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(widest.get(column) + looks.px(EDGE_PX));
        }
    }

    private boolean isWide() {
        return getWidth() > 0 && table.getPreferredSize().width > getWidth();
    }

    /** Columns that do not fit are not cut: the table scrolls sideways. */
    @Override
    public void doLayout() {
        table.setAutoResizeMode(isWide() ? JTable.AUTO_RESIZE_OFF : JTable.AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        super.doLayout();
    }

    /** A wheel over a table that has nothing to scroll scrolls the page. */
    private void passOn(JScrollPane scroll, MouseWheelEvent event) {
        Container page = SwingUtilities.getAncestorOfClass(JScrollPane.class, scroll);
        if (page != null && !scroll.getVerticalScrollBar().isVisible()) {
            page.dispatchEvent(SwingUtilities.convertMouseEvent(scroll, event, page));
        }
    }

    @Override
    public int leastHeight() {
        int rows = Math.max(FEWEST_ROWS, Math.min(MOST_ROWS, shown.rows().size()));
        return (rows + 1) * looks.px(ROW_PX) + looks.px(6) + (isWide() ? looks.px(ROW_PX / 2) : 0);
    }

    @Override
    public boolean grows() {
        return shown.rows().size() > MOST_ROWS
                || shown.rows().stream().anyMatch(row -> row.wish().isPresent());
    }

    /** A table whose tips are those of its rows. */
    private final class Table extends JTable {
        private static final long serialVersionUID = 1;

        Table(Model model) {
            super(model);
        }

        @Override
        public String getToolTipText(MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            return row >= 0 && row < shown.rows().size() ? shown.rows().get(row).tip() : "";
        }
    }

    /** The rows as the toolkit asks for them. */
    private final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1;

        @Override
        public int getRowCount() {
            return shown == null ? 0 : shown.rows().size();
        }

        @Override
        public int getColumnCount() {
            return shown == null ? 0 : shown.heads().size();
        }

        @Override
        public String getColumnName(int column) {
            return shown.heads().get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return shown.rows().get(row).cells().get(column);
        }
    }
}
