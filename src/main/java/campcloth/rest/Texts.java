package campcloth.rest;

import campcloth.figure.Words;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.KeyDeserializer;
import tools.jackson.databind.deser.jdk.StringDeserializer;
import tools.jackson.databind.deser.std.StdScalarDeserializer;
import tools.jackson.databind.module.SimpleModule;

/** Texts as they can be kept: no control characters but tab and line ends, no half of a surrogate pair. Keys of maps too. */
final class Texts {

    static final String WANTED = "text without control characters";

    private Texts() {}

    static SimpleModule module() {
        return new SimpleModule("texts")
                .addDeserializer(String.class, new Text())
                .addKeyDeserializer(String.class, new Key());
    }

    private static final class Text extends StdScalarDeserializer<String> {

        Text() {
            super(String.class);
        }

        @Override
        public String deserialize(JsonParser parser, DeserializationContext context) {
            String text = StringDeserializer.instance.deserialize(parser, context);
            if (!Words.canBeKept(text)) {
                throw context.weirdStringException(text, String.class, WANTED);
            }
            return text;
        }
    }

    private static final class Key extends KeyDeserializer {

        @Override
        public Object deserializeKey(String key, DeserializationContext context) {
            if (!Words.canBeKept(key)) {
                throw context.weirdKeyException(String.class, key, WANTED);
            }
            return key;
        }
    }
}
