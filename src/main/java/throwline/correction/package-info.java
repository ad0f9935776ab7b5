/**
 * Statistics of learning from flights: what was noticed against what was predicted.
 *
 * <p>Takes: predictions with their bands, what was noticed in flight or found in a log, and how each was measured.
 *
 * <p>Gives: predictions and bands after the flights, which of the notes contradict the rest, and what to measure next.
 */
@NullMarked
package throwline.correction;

import org.jspecify.annotations.NullMarked;
