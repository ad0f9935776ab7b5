package throwline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import throwline.input.ModelFile;
import throwline.input.ReadModel;
import throwline.model.Assumption;
import throwline.report.CheckAnswer;
import throwline.report.ReportFile;
import throwline.report.answer.CheckDocument;
import throwline.report.chart.Charts;
import throwline.study.ModelReview;

/** Is this model file my aeroplane? */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Mixin
    private FolderOptions folder = new FolderOptions();

    CheckCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        ReadModel.Project project = model.read(context, model.airfoils());
        folder.write(context, () -> plan(project));
        CheckAnswer answer = new CheckAnswer(
                project.model(),
                project.assumed().stream()
                        .map(a -> new CheckAnswer.Assumed(a.path(), a.value(), ModelFile.reason(a)))
                        .toList(),
                ModelReview.of(project.model()),
                project.notes());
        context.terminal().answer(context.shown(CheckDocument.of(answer), context.page(project.display())));
        return ExitCode.DONE.number();
    }

    private List<ReportFile> plan(ReadModel.Project project) {
        return new Charts(context.words())
                .plan(
                        project.model(),
                        project.assumed().stream().map(Assumption::path).collect(Collectors.toSet()),
                        project.display(),
                        folder.formats());
    }
}
