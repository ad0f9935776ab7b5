package throwline.units;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Name in data files: of a record's component, where it is not that of the component, or of a number that a method of the
 * record works out.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface Key {

    /** Stands for the name of a component that data files leave out. */
    String NONE = "";

    /** Stands for the name of a component whose own components stand in its place. */
    String INLINE = "*";

    /** The name. */
    String value();

    /** Component or method behind which data files have what a method works out; for methods alone. */
    String after() default "";

    /** True for a text that data files have as null where it is empty. */
    boolean nullIfEmpty() default false;
}
