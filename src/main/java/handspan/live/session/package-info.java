/**
 * One instrument at work: its engine, its threads, what it can be told and what it shows.
 *
 * <p>Start reading at {@link handspan.live.session.Engine}, then {@link handspan.live.session.Session}.
 */
@NullMarked
package handspan.live.session;

import org.jspecify.annotations.NullMarked;
