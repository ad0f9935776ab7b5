package throwline.study;

/**
 * Lessons of flights on a model and of other throws for it, from one estimate.
 *
 * @param file of the model as its file has it
 * @param tried of the same with the throws that are tried
 */
public record TriedLessons(Lessons file, Lessons tried) {}
