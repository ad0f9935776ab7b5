package throwline.model;

/** Thing that its owner gave a name, by which answers tell of it. */
public interface Named {

    /** What its owner calls it. */
    String name();
}
