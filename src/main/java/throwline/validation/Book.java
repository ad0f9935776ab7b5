package throwline.validation;

import java.util.List;
import throwline.section.computed.LearnedAirfoils;

/**
 * What the product says of all cases.
 *
 * @param cases in the order of their files
 * @param statistics by figure and basis
 * @param stated bands that the product states
 * @param bands bands that follow from the statistics
 * @param learned what the measured airfoils of the library teach of others
 */
public record Book(
        List<CaseResult> cases,
        List<Statistics> statistics,
        List<BandRow> stated,
        List<BandRow> bands,
        LearnedAirfoils learned) {

    public Book {
        cases = List.copyOf(cases);
        statistics = List.copyOf(statistics);
        stated = List.copyOf(stated);
        bands = List.copyOf(bands);
    }

    /** True where every check of every case was met. */
    public boolean passed() {
        return cases.stream().allMatch(CaseResult::passed);
    }

    /** The file of bands. */
    public String bandsFile() {
        return BandTable.text(bands);
    }
}
