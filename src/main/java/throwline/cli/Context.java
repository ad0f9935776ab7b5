package throwline.cli;

import throwline.words.Words;

/**
 * What every command works with.
 *
 * @param terminal the streams of the process
 * @param words every sentence that a person reads
 */
record Context(Terminal terminal, Words words) {}
