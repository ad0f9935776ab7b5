package throwline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import throwline.report.ReportFile;
import throwline.report.chart.PictureFormats;

/** Folder that a command writes files into where it is asked to. */
final class FolderOptions {

    @Option(names = "--out", paramLabel = "DIR", order = 30)
    private @Nullable Path folder;

    @Option(names = "--svg", order = 31)
    private boolean svg;

    @Mixin
    private ReplaceOption replace = new ReplaceOption();

    /** True where files are wanted. */
    boolean isAsked() {
        return folder != null;
    }

    /** Formats of charts. */
    PictureFormats formats() {
        return svg ? PictureFormats.PNG_AND_SVG : PictureFormats.PNG;
    }

    /**
     * Writes the files, all or none, where they are wanted.
     *
     * @throws WrongInput where the folder cannot be used or a file is not ours to replace
     */
    void write(Context context, Supplier<List<ReportFile>> files) {
        Path place = folder;
        if (place != null) {
            write(context, place, files.get());
        }
    }

    /** Writes files into another folder by the same rules. */
    void write(Context context, Path other, List<ReportFile> files) {
        replace.write(context, other, files);
    }
}
