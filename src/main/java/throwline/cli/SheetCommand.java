package throwline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import throwline.input.ReadModel;
import throwline.model.Pack;
import throwline.report.data.SheetEntry;
import throwline.section.AirfoilLibrary;

/** Sheets for the bench, the field and the transmitter's tray. */
@Command(name = "sheet")
final class SheetCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Mixin
    private PackOption pack = new PackOption();

    @Mixin
    private FlightsOption flights = new FlightsOption();

    @Option(names = "--out", required = true, paramLabel = "DIR", order = 30)
    private Path out = Path.of("");

    @Mixin
    private ReplaceOption replace = new ReplaceOption();

    @Mixin
    private SheetOptions sheets = new SheetOptions();

    SheetCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        Optional<List<SheetEntry>> earlier = sheets.earlier(context);
        Pack with = pack.one(context, project.model());
        SheetRun run = SheetRun.of(
                context,
                sheets,
                project.display(),
                project.model(),
                library,
                with,
                earlier,
                plain -> flights.learn(context, model.file(), plain, library));
        replace.write(context, out, run.files());
        context.terminal().progress("");
        context.terminal().answer(run.written(context, out) + "\n");
        return ExitCode.of(run.allFound());
    }
}
