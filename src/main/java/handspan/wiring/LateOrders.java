package handspan.wiring;

import handspan.outside.osc.remote.RemoteOrder;
import java.net.InetSocketAddress;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Orders that came too fast, of which the latest of each kind is all that matters: tuning, transposition, trim. */
final class LateOrders {
    /** An order and who gave it. */
    record Late(RemoteOrder order, InetSocketAddress sender) {}

    private enum Kind {
        TUNING,
        TRANSPOSE,
        TRIM
    }

    private final Map<Kind, Late> latest = new EnumMap<>(Kind.class);

    private static @Nullable Kind kind(RemoteOrder order) {
        if (order instanceof RemoteOrder.TuningByName || order instanceof RemoteOrder.TuningByNumber) {
            return Kind.TUNING;
        } else if (order instanceof RemoteOrder.Transpose) {
            return Kind.TRANSPOSE;
        }
        return order instanceof RemoteOrder.Trim ? Kind.TRIM : null;
    }

    /** Whether an order is one of these; all others are now or never. */
    static boolean mayWait(RemoteOrder order) {
        return kind(order) != null;
    }

    /**
     * Keeps an order that may wait.
     *
     * @return the one that it takes the place of
     */
    Optional<Late> keep(RemoteOrder order, InetSocketAddress sender) {
        Kind kind = kind(order);
        return kind == null ? Optional.empty() : Optional.ofNullable(latest.put(kind, new Late(order, sender)));
    }

    /**
     * Lets go of what is outdated by an order that is carried out.
     *
     * @return what was let go of
     */
    Optional<Late> outdate(RemoteOrder order) {
        Kind kind = kind(order);
        return kind == null ? Optional.empty() : Optional.ofNullable(latest.remove(kind));
    }

    boolean isEmpty() {
        return latest.isEmpty();
    }

    /** Takes one out; there must be one. */
    Late take() {
        Kind first = latest.keySet().iterator().next();
        Late late = latest.remove(first);
        if (late == null) {
            throw new IllegalStateException("a kind without an order: " + first);
        }
        return late;
    }
}
