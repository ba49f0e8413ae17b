package handspan.number.fit;

/**
 * The straight line that lies nearest below the latest points: for times that can be late but never early. Allocates
 * nothing after it is made. Owned by one thread.
 *
 * <p>Of all lines below all points it is the one with the least sum of distances to them, that is, the edge of the
 * lower convex hull over the mean of x (the linear programme of S. Moon, P. Skelly, D. Towsley, Estimation and removal
 * of clock skew from network delay measurements, INFOCOM 1999; solved by the hull as in L. Zhang, Z. Liu, C. Xia, Clock
 * synchronization algorithms for network measurements, INFOCOM 2002).
 */
public final class LineBelow {
    /** Points above a line of many points after which it is looked for again. */
    private static final int EVERY = 8;

    private final double[] x;
    private final double[] y;
    private final int[] hull;
    private int next;
    private int count;
    private double slope;
    private double atX;
    private double atY;
    private double meanAbove;
    private int sinceSettled;

    /**
     * A line below nothing yet.
     *
     * @param capacity points it looks back on, 2 or more
     */
    public LineBelow(int capacity) {
        if (capacity < 2) {
            throw new IllegalArgumentException("a line below " + capacity + " points (2 or more)");
        }
        this.x = new double[capacity];
        this.y = new double[capacity];
        this.hull = new int[capacity];
    }

    /** Forgets all points. */
    public void clear() {
        next = 0;
        count = 0;
        slope = 0;
        meanAbove = 0;
    }

    /**
     * Takes a point; the oldest goes when there is no room.
     *
     * @param px not under the last one
     * @param py any number
     */
    public void add(double px, double py) {
        x[next] = px;
        y[next] = py;
        next = (next + 1) % x.length;
        boolean full = count == x.length;
        count = Math.min(count + 1, x.length);
        sinceSettled++;
        // points above it move the line little once there are many: it is looked for again now and then
        if (!full || py < at(px) || sinceSettled >= EVERY) {
            settle();
        }
    }

    private int place(int index) {
        return (next - count + index + x.length) % x.length;
    }

    private void settle() {
        sinceSettled = 0;
        double meanX = 0;
        double meanY = 0;
        int size = 0;
        for (int i = 0; i < count; i++) {
            int place = place(i);
            meanX += x[place];
            meanY += y[place];
            size = withPoint(place, size);
        }
        meanX /= count;
        meanY /= count;
        int edge = 1;
        while (edge < size - 1 && x[hull[edge]] < meanX) {
            edge++;
        }
        atX = x[hull[0]];
        atY = y[hull[0]];
        slope = 0;
        if (size > 1) {
            atX = x[hull[edge]];
            atY = y[hull[edge]];
            slope = slope(hull[edge - 1], hull[edge]);
        }
        meanAbove = meanY - at(meanX);
    }

    /** Puts a point on the hull and takes off what lies above it; returns how many are on it. */
    private int withPoint(int place, int before) {
        int size = before;
        if (size > 0 && x[hull[size - 1]] == x[place]) {
            if (y[hull[size - 1]] <= y[place]) {
                return size;
            }
            size--;
        }
        while (size > 1 && slope(hull[size - 2], hull[size - 1]) >= slope(hull[size - 1], place)) {
            size--;
        }
        hull[size] = place;
        return size + 1;
    }

    private double slope(int from, int to) {
        return (y[to] - y[from]) / (x[to] - x[from]);
    }

    /** The line at some x; 0 without a point. */
    public double at(double px) {
        return count == 0 ? 0 : atY + slope * (px - atX);
    }

    /** Its rise for each x; 0 with one point. */
    public double slope() {
        return slope;
    }

    /** How far the points lie above it on average. */
    public double meanAbove() {
        return meanAbove;
    }

    /** Points it looks at. */
    public int count() {
        return count;
    }

    /** From the first to the last x it looks at. */
    public double span() {
        return count == 0 ? 0 : x[place(count - 1)] - x[place(0)];
    }
}
