package throwline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Assumption;
import throwline.report.CheckAnswer;
import throwline.report.ReportFile;
import throwline.report.answer.CheckDocument;
import throwline.report.chart.Charts;
import throwline.report.chart.FlowCharts;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.CruiseTrimStudy;
import throwline.study.ModelReview;
import throwline.study.OutlineAir;
import throwline.study.OutlineReview;

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
        NamedAirfoils airfoils = model.airfoils();
        ReadModel.Project project = model.read(context, airfoils);
        List<OutlineAir> outlines = OutlineReview.of(project.model(), airfoils);
        CruiseTrimStudy.Rigged rigged =
                new CruiseTrimStudy(new MeasuredSections(), Bands.load()).rigged(project.model(), airfoils);
        folder.write(
                context,
                () -> Stream.concat(
                                plan(project).stream(),
                                new FlowCharts(context.words()).draw(outlines, folder.formats()).stream())
                        .toList());
        CheckAnswer answer = new CheckAnswer(
                project.model(),
                project.assumed().stream()
                        .map(a -> new CheckAnswer.Assumed(a.path(), a.value(), ModelFile.reason(a)))
                        .toList(),
                ModelReview.of(rigged.model()),
                Stream.concat(rigged.notes().stream(), project.notes().stream()).toList(),
                outlines);
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
