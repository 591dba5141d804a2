package campcloth.rest;

import java.io.IOException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import tools.jackson.databind.json.JsonMapper;

/** What the web server refuses before any of our code sees it (addresses that are none) is a problem document, too. */
@Configuration
class ProblemValve {

    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> problemsFromTheServer(JsonMapper json) {
        return factory -> factory.addContextCustomizers(
                context -> context.getParent().getPipeline().addValve(new Report(json)));
    }

    private static final class Report extends ErrorReportValve {

        private final JsonMapper json;

        Report(JsonMapper json) {
            this.json = json;
        }

        @Override
        protected void report(Request request, Response response, @Nullable Throwable failure) {
            HttpStatus status = HttpStatus.resolve(response.getStatus());
            if (status == null
                    || !status.isError()
                    || response.getContentWritten() > 0
                    || !response.setErrorReported()) {
                return;
            }
            try {
                response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
                byte[] body = json.writeValueAsBytes(
                        Problems.ofStatus(status, "The address or the request is not well formed."));
                response.getOutputStream().write(body);
                response.finishResponse();
            } catch (IOException | IllegalStateException gone) {
                getContainer().getLogger().debug("No answer could be written", gone);
            }
        }
    }
}
