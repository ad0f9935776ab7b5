package throwline.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import throwline.words.Words;

/** Layout of every help text, with the words of the product and the options that work everywhere. */
final class HelpLayout {

    private static final int LAST = 100;

    /** The narrowest that the library lays out; a narrower terminal folds it. */
    private static final int NARROWEST = 55;

    private final Words words;
    private final WordsBundle bundle;
    private final int width;

    HelpLayout(Context context) {
        this.words = context.words();
        this.bundle = new WordsBundle(words);
        this.width = Math.max(NARROWEST, context.terminal().width());
    }

    void apply(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        line.setResourceBundle(bundle);
        spec.versionProvider(new Version());
        String name = spec.name();
        spec.addOption(standard("-h", "--help").usageHelp(true).order(LAST).build());
        spec.addOption(
                standard("-V", "--version").versionHelp(true).order(LAST + 1).build());
        UsageMessageSpec usage = spec.usageMessage();
        usage.width(width);
        usage.sortOptions(false);
        usage.sortSynopsis(false);
        if (spec.parent() == null) {
            usage.customSynopsis(format("cli.throwline.synopsis"));
        }
        usage.synopsisHeading(format("cli.heading.usage") + " ");
        usage.descriptionHeading("%n");
        usage.description(format("cli." + name + ".what"));
        usage.parameterListHeading("%n" + format("cli.heading.parameters") + "%n");
        usage.optionListHeading("%n" + format("cli.heading.options") + "%n");
        usage.commandListHeading("%n" + format("cli.heading.commands") + "%n");
        usage.footerHeading("%n" + format("cli.heading.example") + "%n");
        usage.footer(format("cli." + name + ".example"));
    }

    /** A sentence where the command line library reads signs of a format. */
    private String format(String key) {
        return words.say(key).replace("%", "%%");
    }

    private OptionSpec.Builder standard(String name, String longName) {
        return OptionSpec.builder(name, longName)
                .type(boolean.class)
                .description(words.say("cli." + longName.substring(2)));
    }
}
