package throwline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.data.SheetCsv;
import throwline.report.data.SheetEntry;
import throwline.report.sheet.SheetAnswer;
import throwline.report.sheet.Sheets;
import throwline.report.sheet.Size;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;

/** Sheets for the bench, the field and the transmitter's tray. */
@Command(name = "sheet")
final class SheetCommand implements Callable<Integer> {

    /** Larger than any sheet of numbers, bytes. */
    private static final int LARGEST = 4_000_000;

    private final Context context;

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String model = "";

    @Option(names = "--out", required = true, paramLabel = "DIR", order = 1, description = "${bundle:cli.sheet.out}")
    private Path out = Path.of("");

    @Option(names = "--pack", paramLabel = "NAME", order = 2, description = "${bundle:cli.sheet.pack}")
    private @Nullable String pack;

    @Option(names = "--paper", paramLabel = "a4|letter", order = 3, description = "${bundle:cli.sheet.paper}")
    private Size.Paper paper = Size.Paper.A4;

    @Option(names = "--since", paramLabel = "FILE", order = 4, description = "${bundle:cli.sheet.since}")
    private @Nullable Path since;

    @Option(names = "--replace", order = 5, description = "${bundle:cli.replace}")
    private boolean replace;

    SheetCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = Airfoils.besides(model);
        ReadModel.Project project = new ModelReader(context, library).read(model);
        Model read = project.model();
        Optional<List<SheetEntry>> earlier = Optional.ofNullable(since).map(this::earlier);
        String name = pack;
        Pack with = name == null
                ? read.packs().get(0)
                : new Chosen(context).among("--pack", name, read.name(), read.packs(), Pack::name);
        context.terminal().progress(context.words().say("cli.compare.working", read.name()));
        Comparison comparison =
                new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(read, library, List.of(with));
        context.terminal().progress(context.words().say("cli.compare.drawing"));
        Terminal terminal = context.terminal();
        Page page = Page.of(terminal.width(), terminal.unicode(), terminal.styled(), project.display());
        SheetAnswer answer = new SheetAnswer(read, comparison.packs().get(0), earlier);
        List<ReportFile> files = new Sheets(page, context.words(), paper).files(answer);
        OutputFolder output = new OutputFolder(out, replace, context.words());
        output.add("", files);
        output.write();
        terminal.progress("");
        String names = String.join(", ", files.stream().map(ReportFile::name).toList());
        terminal.answer(context.words().say("cli.sheet.done", names, out) + "\n");
        boolean all = comparison.packs().get(0).setUps().stream()
                .allMatch(setUp -> setUp.headlines().isComplete());
        return (all ? ExitCode.DONE : ExitCode.NOT_ALL_FOUND).number();
    }

    private static String beginning(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8);
        }
    }

    /** The numbers of an earlier sheet. */
    private List<SheetEntry> earlier(Path file) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw new WrongInput(context.words().say("cli.sheet.since.wrong", file, 1));
            }
            SheetCsv.Read read = SheetCsv.read(beginning(file));
            if (read.wrongLine().isPresent()) {
                throw new WrongInput(context.words()
                        .say("cli.sheet.since.wrong", file, read.wrongLine().getAsInt()));
            }
            return read.entries();
        } catch (IOException e) {
            throw new WrongInput(context.words().say("cli.sheet.since.missing", file));
        }
    }
}
