package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.report.document.Block;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Learnt;

/** Answer on the flights of a model: numbers before and after, what contradicts the rest, what to measure next. */
public final class LearnDocument {

    /** Numbers that a flyer asks for first. */
    private static final List<FlightQuantity> FIRST = List.of(
            FlightQuantity.STALL_SPEED,
            FlightQuantity.APPROACH_SPEED,
            FlightQuantity.DESCENT_ANGLE,
            FlightQuantity.ELEVATOR_CHANGE,
            FlightQuantity.ROLL_RATE);

    private static final List<FlightQuantity> OTHERS = FlightQuantity.on(FlightQuantity.Screen.GLANCE).stream()
            .filter(quantity -> !FIRST.contains(quantity))
            .toList();

    private LearnDocument() {}

    /**
     * The document.
     *
     * @param learnt what they told
     * @param pictures of bands before and after, and of logs
     * @param files the notes, to be kept with the page
     */
    public static Document of(Learnt learnt, Pictures.Source pictures, List<Block.Enclosed> files) {
        Model model = learnt.after().model();
        LearntNotes notes = new LearntNotes(learnt);
        LearntTable rows = new LearntTable(model.tail().throwChord());
        List<Block> blocks = new ArrayList<>();
        List<Paragraph> contradictions = notes.contradictions();
        if (!contradictions.isEmpty()) {
            blocks.add(Section.of(Text.say("learn.section.contradictions"), contradictions)
                    .as(Role.HEADLINE));
        }
        List<PackResult> packs = learnt.after().packs();
        for (int i = 0; i < packs.size(); i++) {
            Section first = Section.of(
                    Text.say("learn.section.numbers", packs.get(i).pack().name()),
                    List.of(rows.table(packs.get(i), FIRST)));
            blocks.add(i == 0 ? first : first.folded().on(Medium.PAGE));
            blocks.add(Section.of(
                            Text.say("learn.section.others", packs.get(i).pack().name()),
                            List.of(rows.table(packs.get(i), OTHERS)))
                    .folded()
                    .on(Medium.PAGE));
        }
        blocks.add(Section.of(Text.say("learn.section.pictures"), List.of(new Pictures(pictures)))
                .on(Medium.PAGE));
        learnt.logs().forEach(day -> blocks.addAll(LogSection.of(day)));
        blocks.add(Section.of(Text.say("learn.section.next"), notes.next()));
        blocks.add(Section.of(Text.say("row.section.notes"), notes.remarks()));
        blocks.addAll(Sections.closing());
        blocks.addAll(files);
        return new Document(Text.name(model.name()), List.of(LearntNotes.onTop(learnt)), blocks);
    }
}
