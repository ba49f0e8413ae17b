/**
 * What is sent: values, addresses, targets, and the frame that carries them.
 *
 * <p>Start reading at {@link handspan.music.send.SoundFrame}, then {@link handspan.music.send.SendPlan}.
 */
@NullMarked
package handspan.music.send;

import org.jspecify.annotations.NullMarked;
