package throwline.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import throwline.words.Words;

/** One layout for every help text, with the words of the product and the options that work everywhere. */
final class HelpLayout {

    private static final int LAST = 100;

    private final Words words;
    private final int width;

    HelpLayout(Context context) {
        this.words = context.words();
        this.width = context.terminal().width();
    }

    void apply(CommandLine line) {
        WordsBundle bundle = new WordsBundle(words);
        CommandSpec spec = line.getCommandSpec();
        line.setResourceBundle(bundle);
        spec.versionProvider(new Version());
        String name = spec.name();
        spec.addOption(standard("-h", "--help").usageHelp(true).order(LAST).build());
        spec.addOption(
                standard("-V", "--version").versionHelp(true).order(LAST + 1).build());
        UsageMessageSpec usage = spec.usageMessage();
        usage.width(width);
        usage.sortOptions(true);
        usage.sortSynopsis(false);
        if (spec.parent() == null) {
            usage.customSynopsis(bundle.getString("cli.throwline.synopsis"));
        }
        usage.synopsisHeading(bundle.getString("cli.heading.usage") + " ");
        usage.descriptionHeading("%n");
        usage.description(bundle.getString("cli." + name + ".what"));
        usage.parameterListHeading("%n" + bundle.getString("cli.heading.parameters") + "%n");
        usage.optionListHeading("%n" + bundle.getString("cli.heading.options") + "%n");
        usage.commandListHeading("%n" + bundle.getString("cli.heading.commands") + "%n");
        usage.footerHeading("%n" + bundle.getString("cli.heading.example") + "%n");
        usage.footer(bundle.getString("cli." + name + ".example").split("%n"));
    }

    private OptionSpec.Builder standard(String name, String longName) {
        return OptionSpec.builder(name, longName)
                .type(boolean.class)
                .description(words.say("cli." + longName.substring(2)));
    }
}
