package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.study.Learnt;
import throwline.study.SetUpResult;

/** Changes that throws on trial make against the model file, before the answer with these throws. */
public final class TriedDocument {

    private final Comparison before;
    private final Comparison tried;
    private final Set<String> names;

    private TriedDocument(Comparison before, Comparison tried, Set<String> names) {
        this.before = before;
        this.tried = tried;
        this.names = names;
    }

    /**
     * The answer behind what changes.
     *
     * @param before how the set-ups fly as the file has them
     * @param tried how they fly with the throws that are tried
     * @param names of the set-ups that are changed
     * @param learnt what flights told of the throws that are tried, where they put both right
     * @param answer with the throws that are tried
     */
    public static Document of(
            Comparison before, Comparison tried, Set<String> names, Optional<Learnt> learnt, Document answer) {
        List<Block> blocks = new ArrayList<>(new TriedDocument(before, tried, names).sections());
        blocks.add(Section.of(Text.none(), List.of(Paragraph.of(Role.QUIET, Text.say("row.legend.tried")))));
        learnt.map(told -> new LearntNotes(told).tried(names))
                .ifPresent(notes -> blocks.add(Section.of(Text.none(), notes)));
        for (Block block : answer.blocks()) {
            boolean caution = block instanceof Section section && section.role() == Role.CAUTION;
            if (!caution) {
                blocks.add(folded(block));
            }
        }
        blocks.addAll(Sections.cautions());
        return new Document(answer.title(), answer.under(), blocks);
    }

    private static Block folded(Block block) {
        if (block instanceof Section section) {
            return section.heading().isEmpty() && section.medium() == Block.Medium.TERMINAL
                    ? section.on(Block.Medium.PAGE)
                    : section.folded();
        }
        return block instanceof Block.Enclosed
                ? block
                : Section.of(Text.say("row.tried.all"), List.of(block)).folded();
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        Text throwsTried = Text.join(
                Join.SEMICOLON,
                tried.model().setUps().stream()
                        .filter(setUp -> names.contains(setUp.name()))
                        .map(this::told)
                        .toList());
        for (PackResult pack : tried.packs()) {
            List<Block> blocks = new ArrayList<>(InShortSection.dangers(tried.model(), chosen(pack)));
            blocks.addAll(DifferenceSection.everyChange(flown(before, like(pack)), flown(tried, pack)));
            Text heading = tried.packs().size() == 1
                    ? Text.say("row.tried", throwsTried)
                    : Text.say("row.tried.with", throwsTried, pack.pack().name());
            Section section = Section.of(heading, blocks).as(Role.HEADLINE);
            sections.add(sections.isEmpty() ? section : section.folded());
        }
        return sections;
    }

    private List<SetUpResult> chosen(PackResult pack) {
        return pack.setUps().stream()
                .filter(result -> names.contains(result.setUp().name()))
                .toList();
    }

    private PackResult like(PackResult pack) {
        return before.packs().stream()
                .filter(other -> other.pack().equals(pack.pack()))
                .findFirst()
                .orElseThrow();
    }

    private Flown flown(Comparison comparison, PackResult pack) {
        return new Flown(Text.none(), comparison.model(), pack.pack(), chosen(pack), Text.none());
    }

    /** A set-up and where its surfaces stand that are not as in the file. */
    private Text told(SetUp setUp) {
        Model model = tried.model();
        SetUp file = before.model().setUps().stream()
                .filter(other -> other.name().equals(setUp.name()))
                .findFirst()
                .orElse(setUp);
        List<Text> moved = Stream.concat(
                        model.wing().surfaces().stream()
                                .filter(surface -> setUp.deflection(surface.name()) != file.deflection(surface.name()))
                                .map(surface -> Text.say(
                                        "row.stick.pull",
                                        surface.name(),
                                        Value.deflection(setUp.deflection(surface.name())))),
                        Stream.of(setUp)
                                .filter(each -> each.elevator() != file.elevator())
                                .map(each -> Text.say(
                                        "row.stick.pull",
                                        Text.say("row.surface.elevator"),
                                        Value.deflection(each.elevator()))))
                .toList();
        return Text.say("row.stick", setUp.name(), Text.join(Join.COMMA, moved));
    }
}
