package handspan.show.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import handspan.show.chart.ChartFile;
import handspan.show.chart.Picture;
import handspan.show.chart.Theme;
import java.awt.AWTError;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * A frame with a tab for each chart. Alt and a digit choose a tab, Escape closes. Made and shown from any thread but
 * the event thread; all Swing work is done there.
 */
public final class ChartWindow {
    private static final String CLOSE = "close";

    private final String title;
    private final List<Picture> tabs;
    private final Theme theme;

    /**
     * A window; nothing is seen before {@link #showAndWait}.
     *
     * @param title of the frame
     * @param tabs at least one
     * @param theme of the frame, best that of the charts
     */
    public ChartWindow(String title, List<Picture> tabs, Theme theme) {
        if (tabs.isEmpty()) {
            throw new IllegalArgumentException("a window without a chart (at least one)");
        }
        this.title = title;
        this.tabs = List.copyOf(tabs);
        this.theme = theme;
    }

    /**
     * Whether a screen can really be opened. That the environment names one is not enough: the name may be stale, so
     * this connects to it.
     */
    public static boolean screenCanBeOpened() {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                return false;
            }
            GraphicsEnvironment.getLocalGraphicsEnvironment()
                    .getDefaultScreenDevice()
                    .getDefaultConfiguration();
            return Toolkit.getDefaultToolkit().getScreenSize().width > 0;
        } catch (HeadlessException | AWTError | LinkageError | InternalError e) {
            // AWTError: nobody answers; LinkageError: no window libraries here, or a second try after a failed first
            return false;
        }
    }

    /**
     * Shows the window and waits until it is closed; an interrupt closes it.
     *
     * @throws IllegalStateException on the event thread, which must not wait, or where no screen can be opened
     */
    public void showAndWait() {
        if (!screenCanBeOpened()) {
            throw new IllegalStateException("no screen can be opened here: write the charts to files instead");
        }
        if (SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("the event thread cannot wait for a window: call from another");
        }
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<@Nullable JFrame> shown = new AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> shown.set(open(closed)));
            closed.await();
        } catch (InterruptedException e) {
            JFrame frame = shown.get();
            if (frame != null) {
                SwingUtilities.invokeLater(frame::dispose);
            }
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the window could not be built: write the charts to files instead", e);
        }
    }

    private JFrame open(CountDownLatch closed) {
        // the look has to be there before the first component
        if (theme == Theme.DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        JFrame frame = new JFrame(title);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                closed.countDown();
            }
        });
        frame.setContentPane(content());
        closeByEscape(frame);
        frame.pack();
        frame.setLocationRelativeTo(null);
        frame.setVisible(true);
        return frame;
    }

    private JTabbedPane content() {
        JTabbedPane content = new JTabbedPane();
        for (Picture tab : tabs) {
            content.addTab(tab.title(), panel(tab.chart()));
            int index = content.getTabCount() - 1;
            if (index < 9) {
                content.setMnemonicAt(index, KeyEvent.VK_1 + index);
            }
        }
        return content;
    }

    private static ChartPanel panel(JFreeChart chart) {
        ChartPanel panel = new ChartPanel(chart, false, false, false, false, true);
        panel.setPreferredSize(new Dimension(ChartFile.USUAL_WIDTH_PX, ChartFile.USUAL_HEIGHT_PX));
        // drawn at the size it has, never drawn at another and stretched
        panel.setMinimumDrawWidth(0);
        panel.setMinimumDrawHeight(0);
        panel.setMaximumDrawWidth(Integer.MAX_VALUE);
        panel.setMaximumDrawHeight(Integer.MAX_VALUE);
        panel.setMouseZoomable(false);
        return panel;
    }

    private static void closeByEscape(JFrame frame) {
        frame.getRootPane()
                .getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), CLOSE);
        frame.getRootPane().getActionMap().put(CLOSE, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                frame.dispose();
            }
        });
    }
}
