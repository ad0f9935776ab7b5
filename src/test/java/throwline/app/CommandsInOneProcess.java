package throwline.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import throwline.cli.CommandLineProgram;
import throwline.cli.Terminal;

/** A process of its own that answers in several ways, one after the other. */
final class CommandsInOneProcess {

    private CommandsInOneProcess() {}

    /**
     * Runs the commands. Of files that they write it tells what the folder's list of them says: a digest of each.
     *
     * @param files the model file, notes of a flight, and a folder that is made
     */
    public static void main(String[] files) throws IOException {
        System.setProperty("java.awt.headless", "true");
        String model = files[0];
        Path folder = Path.of(files[2]);
        String sheets = folder.resolve("sheets").toString();
        String page = folder.resolve("page").toString();
        String[][] calls = {
            {"check", model},
            {"fly", model, "--setup", "airbrake", "--json"},
            {"compare", model},
            {"compare", model, "--json"},
            {"compare", model, "--csv"},
            {"find", model, "--stall-at", "6.9m/s", "--roll", "60deg/s", "--at", "9m/s", "--json"},
            {"learn", model, files[1], "--json"},
            {"sheet", model, "--out", sheets},
            {"fly", model, "--setup", "airbrake", "--out", page}
        };
        for (String[] call : calls) {
            new CommandLineProgram(Terminal.ofProcess()).run(call);
        }
        for (String written : new String[] {sheets, page}) {
            System.out.writeBytes(Files.readAllBytes(Path.of(written, "throwline-files.txt")));
        }
    }
}
