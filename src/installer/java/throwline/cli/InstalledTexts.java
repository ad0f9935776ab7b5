package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Texts that an installed program brings along: completion for bash and zsh, and the manual page. */
final class InstalledTexts {

    private static final String NAME = "throwline";

    private InstalledTexts() {}

    /**
     * Writes them.
     *
     * @param arguments the folder, and the version of the program
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        CommandLine line = new CommandLineProgram(Terminal.ofProcess()).described();
        write(folder.resolve("completion").resolve(NAME), AutoComplete.bash(NAME, line));
        write(folder.resolve("man").resolve("man1").resolve(NAME + ".1"), manual(line, arguments[1]));
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private static String manual(CommandLine line, String version) {
        StringBuilder page = new StringBuilder();
        page.append(".TH THROWLINE 1 \"\" \"throwline ").append(version).append("\" \"User Commands\"\n");
        page.append(".SH NAME\n")
                .append(NAME)
                .append(" \\- ")
                .append(what(line))
                .append('\n');
        page.append(".SH SYNOPSIS\n.nf\n")
                .append(typed(line.getUsageMessage(Ansi.OFF)))
                .append(".fi\n");
        page.append(".SH COMMANDS\n");
        for (Map.Entry<String, CommandLine> command : line.getSubcommands().entrySet()) {
            page.append(".SS ")
                    .append(NAME)
                    .append(' ')
                    .append(command.getKey())
                    .append("\n.nf\n");
            page.append(typed(command.getValue().getUsageMessage(Ansi.OFF))).append(".fi\n");
        }
        return page.toString();
    }

    private static String what(CommandLine line) {
        return typed(String.join(" ", line.getCommandSpec().usageMessage().description()))
                .strip();
    }

    /** Text in which nothing is a request to the formatter. */
    private static String typed(String text) {
        StringBuilder typed = new StringBuilder();
        text.lines()
                .map(row -> row.replace("\\", "\\e").replace("-", "\\-"))
                .forEach(row -> typed.append(row.startsWith(".") || row.startsWith("'") ? "\\&" : "")
                        .append(row)
                        .append('\n'));
        return typed.toString();
    }
}
