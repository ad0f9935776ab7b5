package throwline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import throwline.report.ReportFile;
import throwline.report.data.SheetCsv;
import throwline.report.data.SheetEntry;
import throwline.report.sheet.SheetAnswer;
import throwline.report.sheet.Sheets;
import throwline.report.sheet.Size;
import throwline.units.Display;

/** Paper of sheets, and the earlier sheet that changes are marked against. */
final class SheetOptions {

    /** Larger than any sheet of numbers, bytes. */
    private static final int LARGEST = 4_000_000;

    @Option(names = "--paper", paramLabel = "a4|letter", order = 32)
    private Size.Paper paper = Size.Paper.A4;

    @Option(names = "--changes-from", paramLabel = "FILE", order = 33)
    private @Nullable Path changesFrom;

    /**
     * The numbers of the earlier sheet; empty where none is named.
     *
     * @throws WrongInput where the file is no sheet's
     */
    Optional<List<SheetEntry>> earlier(Context context) {
        return Optional.ofNullable(changesFrom).map(file -> read(context, file));
    }

    /** The files of all sheets. */
    List<ReportFile> files(Context context, Display display, SheetAnswer answer) {
        return new Sheets(context.page(display), context.words(), paper).files(answer);
    }

    private static List<SheetEntry> read(Context context, Path file) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw new WrongInput(context.words().say("cli.changes-from.wrong", file, 1));
            }
            SheetCsv.Read read = SheetCsv.read(beginning(file));
            if (read.wrongLine().isPresent()) {
                throw new WrongInput(context.words()
                        .say("cli.changes-from.wrong", file, read.wrongLine().getAsInt()));
            }
            return read.entries();
        } catch (IOException e) {
            throw new WrongInput(context.words().say("cli.changes-from.missing", file));
        }
    }

    private static String beginning(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8);
        }
    }
}
