/**
 * What the desktop program shows, without its looks: each station of an evening as a page of words, figures and things
 * that can be done now, made from one view of the evening; and what becomes of a player's wishes. Knows no toolkit.
 *
 * <p>Start reading at {@link handspan.show.scene.Guide}.
 */
@NullMarked
package handspan.show.scene;

import org.jspecify.annotations.NullMarked;
