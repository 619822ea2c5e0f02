package benchtwin.ticket;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The templates of this package; they are compiled with it. */
final class Templates {

    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(null, ContentType.Html,
        Templates.class.getClassLoader(), Templates.class.getPackageName());

    private Templates() {
    }

    /**
     * Fills a template in; whatever stands in it is escaped.
     * @param name       its file below {@code src/main/jte/ticket}
     * @param parameters by the template's own names
     * @return XHTML
     */
    static String filled(String name, Map<String, Object> parameters) {
        StringOutput page = new StringOutput();
        ENGINE.render(name, parameters, page);
        return page.toString();
    }
}
