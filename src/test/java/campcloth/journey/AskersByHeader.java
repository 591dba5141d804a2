package campcloth.journey;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.boot.test.context.TestComponent;

/** Lets a test say who asks: an account and its roles in a header, else nobody; links' keys as they stand in the address. */
@TestComponent
public class AskersByHeader implements Filter {

    /** {@code 00000000-...:MAKER,KEEPER}; without it a stranger asks. */
    public static final String HEADER = "X-Asker";

    private final Askers askers;

    AskersByHeader(Askers askers) {
        this.askers = askers;
    }

    @Override
    public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain) {
        Set<ShareKey> keys = Stream.ofNullable(request.getParameterValues("key"))
                .flatMap(Arrays::stream)
                .flatMap(text -> ShareKey.in(text).stream())
                .collect(Collectors.toSet());
        String told = ((HttpServletRequest) request).getHeader(HEADER);
        askers.as((told == null ? Asker.STRANGER : asker(told)).with(keys), () -> {
            try {
                chain.doFilter(request, response);
                return true;
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            } catch (ServletException broken) {
                throw new IllegalStateException(broken);
            }
        });
    }

    private static Asker asker(String told) {
        String[] parts = told.split(":");
        return Asker.of(
                UUID.fromString(parts[0]),
                Arrays.stream(parts[1].split(",")).map(Role::valueOf).collect(Collectors.toSet()));
    }
}
