package throwline.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ModelFile;
import throwline.input.ReadModel;
import throwline.model.Assumption;
import throwline.report.CheckAnswer;
import throwline.report.Page;
import throwline.report.chart.Charts;
import throwline.report.table.CheckTable;
import throwline.study.ModelReview;

/** Is this model file my aeroplane? */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String model = "";

    @Option(names = "--out", paramLabel = "DIR", order = 1, description = "${bundle:cli.check.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 2, description = "${bundle:cli.replace}")
    private boolean replace;

    @Mixin
    private ShownUnits shown = new ShownUnits();

    CheckCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        ReadModel.Project project = new ModelReader(context, Airfoils::besides, shown.units(context)).read(model);
        Optional.ofNullable(out).ifPresent(folder -> draw(folder, project));
        CheckAnswer answer = new CheckAnswer(
                project.model(),
                project.assumed().stream()
                        .map(a -> new CheckAnswer.Assumed(a.path(), a.value(), ModelFile.reason(a)))
                        .toList(),
                ModelReview.of(project.model()),
                project.notes());
        Terminal terminal = context.terminal();
        Page page = Page.of(terminal.width(), terminal.unicode(), terminal.styled(), project.display());
        terminal.answer(new CheckTable(page, context.words()).write(answer));
        return ExitCode.DONE.number();
    }

    private void draw(Path folder, ReadModel.Project project) {
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        output.add(
                "",
                new Charts(context.words())
                        .plan(
                                project.model(),
                                project.assumed().stream().map(Assumption::path).collect(Collectors.toSet()),
                                project.display()));
        output.write();
    }
}
