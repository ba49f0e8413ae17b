/** How in tune a played passage was: from sound frames to notes, cents, vibrato, and two passages side by side. */
@NullMarked
package handspan.music.passage;

import org.jspecify.annotations.NullMarked;
