package throwline.validation;

import java.util.List;
import throwline.section.computed.LearnedAirfoils;

/**
 * Answers of the product to all cases.
 *
 * @param cases in the order of their files
 * @param statistics by figure and basis
 * @param stated bands that the product states
 * @param bands bands that follow from the statistics
 * @param learned what the measured airfoils of the library teach of others
 * @param ways errors of three ways to tell of an airfoil that nobody measured
 */
public record Book(
        List<CaseResult> cases,
        List<Statistics> statistics,
        List<BandRow> stated,
        List<BandRow> bands,
        LearnedAirfoils learned,
        List<WaysRow> ways) {

    public Book {
        cases = List.copyOf(cases);
        statistics = List.copyOf(statistics);
        stated = List.copyOf(stated);
        bands = List.copyOf(bands);
        ways = List.copyOf(ways);
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
