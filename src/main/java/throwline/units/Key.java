package throwline.units;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Name of a record's component in data files, where it is not that of the component. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {

    /** Stands for the name of a component that data files leave out. */
    String NONE = "";

    /** The name. */
    String value();
}
