package throwline.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The templates of src/main/jte, which are part of the program; values that they show are escaped. */
public final class Templates {

    private static final String PACKAGE = "throwline.report.pages";

    private final TemplateEngine engine;

    /** The templates that were compiled with the program. */
    public Templates() {
        engine = TemplateEngine.createPrecompiled(null, ContentType.Html, Templates.class.getClassLoader(), PACKAGE);
        engine.setTrimControlStructures(true);
    }

    /**
     * The text of a page.
     *
     * @param template its name below src/main/jte, for example {@code compare.jte}
     * @param values by the name of the template's parameter
     */
    public String fill(String template, Map<String, Object> values) {
        StringOutput text = new StringOutput();
        engine.render(template, values, text);
        return text.toString();
    }
}
