package throwline.model;

/**
 * A value that the model file did not give and that was filled in.
 *
 * @param path where it would stand in the file, for example {@code tail.incidence}
 * @param value what was taken, as it would be written there
 */
public record Assumption(String path, String value) {}
