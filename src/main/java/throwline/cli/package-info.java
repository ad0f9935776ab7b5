/**
 * The commands: options, exit codes, what goes to standard output and what to standard error.
 *
 * <p>Takes: arguments, model files (through input).
 *
 * <p>Gives: text, JSON, files in the folder that the user named.
 */
@NullMarked
package throwline.cli;

import org.jspecify.annotations.NullMarked;
