/**
 * From names to concrete parts: sources, targets, folders; the one place that joins the outside to what runs.
 *
 * <p>Start reading at {@link handspan.wiring.Rigs}.
 */
@NullMarked
package handspan.wiring;

import org.jspecify.annotations.NullMarked;
