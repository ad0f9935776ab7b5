package throwline.cli;

import picocli.CommandLine.Option;

/** Option for an answer in its full depth. */
final class AllOption {

    @Option(names = "--all", order = 39)
    private boolean all;

    /** True where nothing is to be folded. */
    boolean wanted() {
        return all;
    }
}
