package campcloth.store;

import org.springframework.stereotype.Component;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON as it is kept in the database: independent of how the service speaks JSON to people. */
@Component
class Json {

    private final JsonMapper mapper = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .addModule(StoredRule.module())
            .build();

    String write(Object value) {
        return mapper.writeValueAsString(value);
    }

    <T> T read(String text, Class<T> type) {
        return mapper.readValue(text, type);
    }
}
