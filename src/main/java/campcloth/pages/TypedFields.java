package campcloth.pages;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.core.ResolvableType;

/** The fields of a form class that carry {@link TypedIn}, by their path without indexes, such as {@code spells.fireDistanceM}. */
final class TypedFields {

    private static final int DEEPEST = 4;
    private static final String FORMS = TypedFields.class.getPackageName();
    private static final Map<Class<?>, Map<String, Units.Measure>> KNOWN = new ConcurrentHashMap<>();

    private TypedFields() {}

    static Map<String, Units.Measure> of(Class<?> form) {
        return KNOWN.computeIfAbsent(form, type -> {
            Map<String, Units.Measure> found = new HashMap<>();
            look(type, "", DEEPEST, found);
            return Map.copyOf(found);
        });
    }

    private static void look(Class<?> form, String path, int deeper, Map<String, Units.Measure> found) {
        for (Class<?> type = form; type != null && isForm(type) && deeper > 0; type = type.getSuperclass()) {
            for (Field field : type.getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    TypedIn typed = field.getAnnotation(TypedIn.class);
                    if (typed != null) {
                        found.put(path + field.getName(), typed.value());
                    } else {
                        look(held(field), path + field.getName() + ".", deeper - 1, found);
                    }
                }
            }
        }
    }

    /** What a list or map holds, else the field's own type. */
    private static Class<?> held(Field field) {
        ResolvableType type = ResolvableType.forField(field);
        ResolvableType[] parts = type.getGenerics();
        return parts.length == 0 ? type.toClass() : parts[parts.length - 1].toClass();
    }

    /** Whether it is a class of ours to be filled by a request. */
    static boolean isForm(Class<?> type) {
        return !type.isEnum() && !type.isRecord() && type.getName().startsWith(FORMS);
    }
}
