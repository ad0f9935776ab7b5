package throwline.validation;

/** A kind of case: knows its columns and how the product answers them. */
interface CaseKind {

    /**
     * Runs a case.
     *
     * @param file the case
     * @return its checks and pairs
     * @throws UnreadableCase where a cell or a file that it names cannot be used
     */
    CaseResult run(CaseFile file) throws UnreadableCase;
}
