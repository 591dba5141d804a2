package campcloth.store;

import campcloth.job.Notation;
import org.springframework.stereotype.Component;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON as it is kept in the database: independent of how the service speaks JSON to people. */
@Component
class Json implements Notation {

    private final JsonMapper mapper = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .addModule(StoredRule.module())
            .build();

    @Override
    public String write(Object value) {
        return mapper.writeValueAsString(value);
    }

    @Override
    public <T> T read(String text, Class<T> type) {
        return mapper.readValue(text, type);
    }
}
