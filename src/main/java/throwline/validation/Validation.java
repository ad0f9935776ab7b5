package throwline.validation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.section.computed.LearnedAirfoils;
import throwline.section.computed.ThreeWays;
import throwline.words.Message;

/** Runs all cases of a folder. */
public final class Validation {

    private final Map<String, CaseKind> kinds;
    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    /**
     * @param sections makes section curves
     * @param library airfoils by name
     */
    public Validation(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
        kinds = Map.of(
                "aircraft", new AircraftCase(sections, library),
                "wing", new WingCase(sections, library),
                "propeller", new PropellerCase(),
                "performance", new PerformanceCase(),
                "section", new SectionCase(sections, library),
                "section, each Reynolds number left out", new ReynoldsLeftOut(sections, library),
                "section, each airfoil stood in for", new StandIns(sections, library),
                "section, each airfoil computed", new ComputedSections(sections, library),
                "section, surface by the method alone", new SurfaceByMethod(sections, library));
    }

    /** One case that ran or did not. */
    private record Attempt(Optional<CaseResult> result, Optional<UnreadableCase> fault) {}

    /**
     * The book.
     *
     * @param folder where the cases are
     * @return all results, statistics and bands
     * @throws UnreadableCase where a case cannot be run; the first of them
     */
    public Book run(CaseFolder folder) throws UnreadableCase {
        List<CaseFile> files = new ArrayList<>();
        for (Path path : folder.tables()) {
            if (CaseFile.isCase(path)) {
                files.add(CaseFile.read(path));
            }
        }
        List<CaseResult> results = new ArrayList<>();
        for (Attempt attempt : files.parallelStream().map(this::attempt).toList()) {
            if (attempt.fault().isPresent()) {
                throw attempt.fault().get();
            }
            attempt.result().ifPresent(results::add);
        }
        List<BandRow> stated = BandTable.stated();
        List<Pair> pairs = results.stream().flatMap(r -> r.pairs().stream()).toList();
        List<Statistics> statistics = Statistics.of(pairs, stated);
        List<Airfoil> airfoils = ComputedSections.teachers(library);
        LearnedAirfoils learned = ComputedSections.learned(airfoils, sections);
        return new Book(
                results,
                statistics,
                stated,
                BandTable.from(folder.practice(), statistics),
                learned,
                WaysRow.of(ThreeWays.of(airfoils, learned)));
    }

    private Attempt attempt(CaseFile file) {
        try {
            CaseKind kind = kinds.get(file.required("kind"));
            if (kind == null) {
                throw new UnreadableCase(Message.of("case.kind", file.path().toString(), file.required("kind")));
            }
            return new Attempt(Optional.of(kind.run(file)), Optional.empty());
        } catch (UnreadableCase e) {
            return new Attempt(Optional.empty(), Optional.of(e));
        }
    }
}
