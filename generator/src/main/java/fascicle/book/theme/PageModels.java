package fascicle.book.theme;

import fascicle.book.page.Markup;
import fascicle.book.page.Page;
import fascicle.book.words.Words;
import fascicle.notebook.read.Suggestion;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import freemarker.template.TemplateSequenceModel;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/**
 * What templates can reach: the components of page records, text, whole numbers, yes and no, lists, and the book's
 * words through {@code say}. Nothing else has a form here, so nothing else can be reached.
 *
 * <p>FreeMarker's edges pass null for what is not there.
 */
@NullUnmarked
final class PageModels implements ObjectWrapper {

    private static final ClassValue<Map<String, Method>> COMPONENTS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> components = new HashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                components.put(component.getName(), component.getAccessor());
            }
            return components;
        }
    };

    private final TemplateMethodModelEx say;

    PageModels(Words words) {
        this.say = given -> {
            String key = given.isEmpty() ? "" : text(given.get(0));
            if (!words.keys().contains(key)) {
                throw new TemplateModelException("the book has no words for “" + key + "”" + meant(key, words.keys()));
            }
            return words.say(key, rest(given));
        };
    }

    /** The top of a template's world: a page's components, and {@code say}. */
    TemplateHashModel top(Page page) {
        TemplateHashModel components = (TemplateHashModel) wrapRecord(page);
        return new TemplateHashModel() {
            @Override
            public TemplateModel get(String key) throws TemplateModelException {
                return key.equals("say") ? say : components.get(key);
            }

            @Override
            public boolean isEmpty() {
                return false;
            }
        };
    }

    @Override
    public TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
        if (value == null) {
            return null;
        } else if (value instanceof TemplateModel already) {
            return already;
        } else if (value instanceof Optional<?> maybe) {
            return maybe.isEmpty() ? null : wrap(maybe.get());
        } else if (value instanceof String text) {
            return new SimpleScalar(printable(text));
        } else if (value instanceof Integer number) {
            return new SimpleNumber(number);
        } else if (value instanceof Boolean yes) {
            return yes ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
        } else if (value instanceof List<?> list) {
            return wrapList(list);
        } else if (value instanceof Markup markup) {
            return HTMLOutputFormat.INSTANCE.fromMarkup(markup.html());
        } else if (value instanceof Record && value.getClass().getPackage().equals(Page.class.getPackage())) {
            return wrapRecord(value);
        }
        throw new TemplateModelException("not for templates: " + value.getClass().getName());
    }

    private TemplateModel wrapRecord(Object record) {
        Map<String, Method> components = COMPONENTS.get(record.getClass());
        return new TemplateHashModel() {
            @Override
            public TemplateModel get(String key) throws TemplateModelException {
                Method component = components.get(key);
                if (component == null) {
                    throw unknown(record.getClass(), key);
                }
                try {
                    return wrap(component.invoke(record));
                } catch (ReflectiveOperationException impossible) {
                    throw new TemplateModelException("a component cannot be read: " + key, impossible);
                }
            }

            @Override
            public boolean isEmpty() {
                return false;
            }
        };
    }

    /**
     * A name that is nowhere is a slip of whoever wrote the template, even where what may be missing is allowed for.
     */
    private static TemplateModelException unknown(Class<?> record, String key) {
        List<String> known = Stream.of(record.getRecordComponents()).map(RecordComponent::getName).toList();
        return new TemplateModelException("“" + key + "” is nothing that " + record.getSimpleName() + " has"
                + meant(key, known) + "; it has: " + String.join(", ", known));
    }

    private static String meant(String name, Collection<String> known) {
        return Suggestion.of(name, known).map(nearest -> " (did you mean “" + nearest + "”?)").orElse("");
    }

    private TemplateModel wrapList(List<?> list) {
        return new TemplateSequenceModel() {
            @Override
            public TemplateModel get(int index) throws TemplateModelException {
                return index >= 0 && index < list.size() ? wrap(list.get(index)) : null;
            }

            @Override
            public int size() {
                return list.size();
            }
        };
    }

    private static String text(Object given) throws TemplateModelException {
        return ((TemplateScalarModel) given).getAsString();
    }

    private static Object[] rest(List<?> given) throws TemplateModelException {
        Object[] rest = new Object[given.size() - 1];
        for (int i = 0; i < rest.length; i++) {
            Object value = given.get(i + 1);
            rest[i] = value instanceof TemplateNumberModel number ? (Object) number.getAsNumber().intValue()
                    : text(value);
        }
        return rest;
    }

    /** HTML knows no control characters but tab and line feed; the others show as the replacement character. */
    private static String printable(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (isUnprintable(text.charAt(i))) {
                return replaced(text);
            }
        }
        return text;
    }

    private static String replaced(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.chars().forEach(c -> shown.append(isUnprintable((char) c) ? '\ufffd' : (char) c));
        return shown.toString();
    }

    private static boolean isUnprintable(char letter) {
        return letter < ' ' ? letter != '\t' && letter != '\n' : letter >= '\u007f' && letter <= '\u009f';
    }
}
