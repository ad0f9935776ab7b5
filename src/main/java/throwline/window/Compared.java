package throwline.window;

import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.report.answer.CompareDocument;
import throwline.report.chart.Charts;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.section.SectionAerodynamics;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.CruiseTrimStudy;
import throwline.study.FirstFlightStudy;
import throwline.study.FirstFlights;
import throwline.study.Learnt;
import throwline.window.session.ModelDocument;
import throwline.window.session.Session;
import throwline.words.Words;

/**
 * All set-ups of a model side by side, worked out as the command does.
 *
 * @param comparison the result
 * @param document what is said of it
 * @param page in whose units
 * @param learnt what flights told of it; empty where they are not used
 */
record Compared(Comparison comparison, Document document, Page page, Optional<Learnt> learnt) {

    private static final int COLUMNS = 100;

    /**
     * What has to be worked out.
     *
     * @param words the sentences
     * @param open the model with what it rests on
     * @param packs first the one that is looked at
     * @param learnt what flights told of it; empty where they are not used
     */
    record Task(Words words, Open open, List<Pack> packs, Optional<Learnt> learnt) {

        static Task of(Words words, Session session, Optional<Learnt> learnt, boolean allPacks) {
            List<Pack> packs = allPacks
                    ? java.util.stream.Stream.concat(
                                    java.util.stream.Stream.of(session.pack()),
                                    session.model().packs().stream().filter(p -> !p.equals(session.pack())))
                            .toList()
                    : List.of(session.pack());
            return new Task(words, Open.of(session), packs, learnt);
        }

        /** Without flights. */
        Comparison compared(SectionAerodynamics sections) {
            return new ComparisonStudy(sections, Bands.load())
                    .compare(open.project().model(), open.airfoils(), packs);
        }

        /** The model's own rules for the first flights with the pack that is looked at. */
        FirstFlights rules(SectionAerodynamics sections) {
            Model rigged = new CruiseTrimStudy(sections, Bands.load())
                    .rigged(open.project().model(), open.airfoils())
                    .model();
            return new FirstFlightStudy(sections).rules(rigged, open.airfoils(), packs.get(0));
        }

        /** The numbers after the flights, of the packs that are wanted. */
        private Comparison after(Learnt told) {
            Comparison all = told.after();
            List<Comparison.PackResult> wanted = packs.stream()
                    .flatMap(pack ->
                            all.packs().stream().filter(each -> each.pack().equals(pack)))
                    .toList();
            return new Comparison(all.model(), all.density(), wanted, all.warnings());
        }

        Compared run(SectionAerodynamics sections) {
            Comparison found = learnt.map(this::after).orElseGet(() -> compared(sections));
            Page page = Page.of(COLUMNS, true, false, open.project().display());
            CompareAnswer answer = new CompareAnswer(
                    found, open.project().assumed(), open.project().notes(), learnt);
            Document document = CompareDocument.of(
                    List.of(new CompareDocument.Compared(
                            answer,
                            open.airfoils(),
                            open.fileName(),
                            open.project().text())),
                    () -> new Charts(words, page.besideSpeed()),
                    new Figures(page, words));
            return new Compared(found, document, page, learnt);
        }
    }

    /**
     * A model as it is open now.
     *
     * @param project the model that flies
     * @param airfoils that it names
     * @param fileName of its file
     */
    record Open(throwline.input.ReadModel.Project project, throwline.section.AirfoilLibrary airfoils, String fileName) {

        static Open of(Session session) {
            ModelDocument document = session.document();
            String name = document.place()
                    .flatMap(place -> Optional.ofNullable(place.getFileName()))
                    .map(Object::toString)
                    .orElse("model.yaml");
            return new Open(document.good(), document.airfoils(), name);
        }
    }
}
