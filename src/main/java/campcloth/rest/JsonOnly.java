package campcloth.rest;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverters;
import org.springframework.web.servlet.config.annotation.ContentNegotiationConfigurer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * One way to speak: JSON in and out, strict, whatever else lies on the class path. What a browser or program says it would accept
 * does not change the answer, so that a refusal is always a problem document.
 */
@Configuration
class JsonOnly implements WebMvcConfigurer {

    @Override
    public void configureMessageConverters(HttpMessageConverters.ServerBuilder builder) {
        builder.configureMessageConvertersList(converters -> converters.removeIf(
                converter -> converter.getSupportedMediaTypes().stream().anyMatch(JsonOnly::isAnotherNotation)));
    }

    @Override
    public void configureContentNegotiation(ContentNegotiationConfigurer configurer) {
        configurer.ignoreAcceptHeader(true).defaultContentType(MediaType.APPLICATION_JSON);
    }

    private static boolean isAnotherNotation(MediaType type) {
        String name = type.getSubtype();
        return name.contains("yaml") || name.contains("xml") && !name.contains("svg") || name.contains("cbor");
    }
}
