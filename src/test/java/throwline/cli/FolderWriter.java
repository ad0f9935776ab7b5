package throwline.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import throwline.report.ReportFile;
import throwline.words.Words;

/** A process that writes one folder again and again: the folder, what stands in every file, how often. */
final class FolderWriter {

    static final int FILES = 31;

    private FolderWriter() {}

    /** Runs it. */
    public static void main(String[] arguments) {
        System.out.println("begins");
        for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
            write(Path.of(arguments[0]), arguments[1] + i);
        }
    }

    static void write(Path folder, String content) {
        List<ReportFile> files = new ArrayList<>();
        for (int i = 0; i < FILES; i++) {
            byte[] bytes = (content + "\n").repeat(2000).getBytes(StandardCharsets.UTF_8);
            files.add(new ReportFile("file" + i + ".svg", bytes));
        }
        OutputFolder output = new OutputFolder(folder, false, Words.load());
        output.add("", files);
        output.write();
    }
}
