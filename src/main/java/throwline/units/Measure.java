package throwline.units;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Kind of quantity of a record's component, or of a number that a method of the record works out, where its unit in a data
 * file is not the SI unit that it has inside.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface Measure {

    /** The kind. */
    Dimension value();
}
