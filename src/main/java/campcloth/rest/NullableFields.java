package campcloth.rest;

import com.fasterxml.jackson.databind.type.TypeFactory;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Carries the null-marking of records over to their schemas: what is not {@link Nullable} is required, and what is may be
 * null. Answers always write every field; requests may leave out what may be null.
 */
final class NullableFields implements ModelConverter {

    private static final String NULL = "null";

    @Override
    @SuppressWarnings("rawtypes")
    public @Nullable Schema resolve(AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
        Schema<?> resolved = chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
        Class<?> raw =
                TypeFactory.defaultInstance().constructType(type.getType()).getRawClass();
        if (resolved != null && raw.isRecord()) {
            mark(defined(resolved, context), raw.getRecordComponents());
        }
        return resolved;
    }

    private static Schema<?> defined(Schema<?> resolved, ModelConverterContext context) {
        String reference = resolved.get$ref();
        if (reference == null) {
            return resolved;
        }
        Schema<?> defined = context.getDefinedModels().get(reference.substring(reference.lastIndexOf('/') + 1));
        return defined == null ? resolved : defined;
    }

    private static void mark(Schema<?> owner, RecordComponent[] components) {
        if (owner.getProperties() == null) {
            return;
        }
        for (RecordComponent component : components) {
            Schema<?> property = owner.getProperties().get(component.getName());
            if (property == null) {
                continue;
            }
            if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                owner.getProperties().put(component.getName(), nullable(property));
            } else if (owner.getRequired() == null || !owner.getRequired().contains(component.getName())) {
                owner.addRequiredItem(component.getName());
            }
        }
    }

    private static Schema<?> nullable(Schema<?> property) {
        if (property.get$ref() != null) {
            Schema<?> reference = new Schema<>().$ref(property.get$ref());
            return new Schema<>()
                    .anyOf(List.of(reference, new Schema<>().types(Set.of(NULL))))
                    .description(property.getDescription());
        }
        if (property.getTypes() != null) {
            property.addType(NULL);
            withNull(property);
        }
        return property;
    }

    @SuppressWarnings("unchecked")
    private static void withNull(Schema<?> property) {
        List<?> words = property.getEnum();
        if (words != null && !words.contains(null)) {
            List<@Nullable Object> more = new ArrayList<>(words);
            more.add(null);
            ((Schema<Object>) property).setEnum(more);
        }
    }
}
