package throwline.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import throwline.report.ReportFile;

/** Option of what may be replaced in a folder that files are written into. */
final class ReplaceOption {

    @Option(names = "--replace", order = 39)
    private boolean replace;

    /**
     * Writes files, all or none.
     *
     * @throws WrongInput where the folder cannot be used or a file is not ours to replace
     */
    void write(Context context, Path folder, List<ReportFile> files) {
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        output.add("", files);
        output.write();
    }
}
