package campcloth.pages;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.regex.Pattern;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Numbers of rows in the names of fields, such as {@code spells[3].name}. A list grows as far as a name says, and nothing else
 * bounds it where fields are bound directly; so a name that says too much is no field of ours.
 */
@Configuration(proxyBeanMethods = false)
public class RowNumbers implements WebMvcConfigurer {

    /** Most rows of a list in a form: more than the core takes, so that it is the core that refuses. */
    private static final int MOST_ROWS = 128;

    /** A number in brackets: in digits of any script, perhaps signed or quoted. */
    private static final Pattern NUMBER = Pattern.compile("\\[[^\\[\\]\\p{Nd}]*(\\p{Nd}+)");

    private static final Pattern SHORT = Pattern.compile("[0-9]{1,3}");

    /** Whether a form of ours could have a field of this name. */
    public static boolean areInReach(String field) {
        return NUMBER.matcher(field)
                .results()
                .map(found -> found.group(1))
                .allMatch(digits -> SHORT.matcher(digits).matches() && Integer.parseInt(digits) < MOST_ROWS);
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new OnPages());
    }

    private static final class OnPages implements HandlerInterceptor {

        @Override
        public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
            if (PagePaths.isPage(request)
                    && !request.getParameterMap().keySet().stream().allMatch(RowNumbers::areInReach)) {
                throw new ErrorResponseException(HttpStatus.BAD_REQUEST);
            }
            return true;
        }
    }
}
