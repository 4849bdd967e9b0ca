package fascicle.book.theme;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;

/** What the template library says of a broken template, in words for whoever wrote it. */
final class TemplateFaults {

    private TemplateFaults() {}

    /** A template that cannot be read. */
    static ThemeBroken.Fault of(String template, ParseException broken) {
        return fault(template, broken.getLineNumber(), broken.getColumnNumber(), 
                String.valueOf(broken.getEditorMessage()).split(" Help \\(latest version\\)", 2)[0]);
    }

    /** A template that fails on a page; the fault may lie in one that it brings in. */
    static ThemeBroken.Fault of(String page, TemplateException failed) {
        String template = failed.getTemplateName();
        Integer line = failed.getLineNumber();
        Integer column = failed.getColumnNumber();
        return fault(template == null ? page : template, line == null ? 1 : line, column == null ? 1 : column,
                words(failed));
    }

    private static String words(TemplateException failed) {
        String blamed = failed.getBlamedExpressionString();
        if (failed instanceof InvalidReferenceException && blamed != null) {
            return "“" + blamed + "” is not known on every page; expected “<#if " + blamed + "??>” round it";
        }
        // The library's advice after the first paragraph speaks of what themes may not do.
        return String.valueOf(failed.getMessageWithoutStackTop()).split("\\n\\s*\\n|\\n----", 2)[0];
    }

    private static ThemeBroken.Fault fault(String template, int line, int column, String message) {
        return new ThemeBroken.Fault(template, Math.max(1, line), Math.max(1, column), message);
    }
}
