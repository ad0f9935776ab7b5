/**
 * The program: main, which opens the window or starts the command line.
 *
 * <p>Takes: the arguments of the process.
 *
 * <p>Gives: the exit code of the process.
 */
@NullMarked
package throwline.app;

import org.jspecify.annotations.NullMarked;
