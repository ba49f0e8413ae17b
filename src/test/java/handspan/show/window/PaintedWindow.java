package handspan.show.window;

import handspan.show.chart.LiveChartView;
import handspan.show.scene.Guide;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** The window's content, drawn into memory: for benchmarks. Event thread only. */
public final class PaintedWindow {
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    private final EveningPane pane;
    private final BufferedImage image = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);

    /** Content that shows what a guide says. */
    public PaintedWindow(Guide guide) {
        pane = new EveningPane(guide);
        pane.setSize(WIDTH_PX, HEIGHT_PX);
    }

    /** What a window's timer does. */
    public void refresh() {
        pane.refresh();
    }

    /** Gives every part its place, as a window does when a page is new. */
    public void layOut() {
        layOut(pane);
        layOut(pane);
    }

    private static void layOut(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    /** Draws charts and stage, which is what moves all the time. */
    public void paintMoving() {
        paintMoving(pane);
    }

    private void paintMoving(Component component) {
        if (component instanceof LiveChartView || component instanceof StagePane) {
            paint(component);
        } else if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                paintMoving(child);
            }
        }
    }

    /** Draws all of it. */
    public void paintAll() {
        paint(pane);
    }

    private void paint(Component component) {
        Graphics2D pen = image.createGraphics();
        component.paint(pen);
        pen.dispose();
    }

    /** Whether all charts know what they show. */
    public boolean isIdle() {
        return pane.isIdle();
    }
}
