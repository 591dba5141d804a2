package campcloth.door;

import campcloth.access.Account;
import campcloth.access.AccountKeeping;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Logins;
import campcloth.access.Mode;
import campcloth.access.PasswordHashes;
import campcloth.access.Role;
import campcloth.access.Tokens;
import campcloth.access.Vouching;
import io.github.bucket4j.TimeMeter;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.actuate.autoconfigure.web.server.ManagementPortType;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.web.servlet.DelegatingFilterProxyRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.RequestCacheConfigurer;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.ExceptionTranslationFilter;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.session.jdbc.config.annotation.web.http.EnableJdbcHttpSession;
import org.springframework.web.servlet.HandlerExceptionResolver;

/**
 * The door of a service for many. People log in on a page and have a session, kept in the database; their forms carry a token against
 * being sent by other pages. Programs show a token of their own. Who may see or change which kept thing the stores decide by the
 * asker; here it is decided who may come to which kind of address.
 */
@Configuration
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
@EnableWebSecurity
@EnableJdbcHttpSession(maxInactiveIntervalInSeconds = HostedDoor.STRANGERS_SESSION_SECONDS)
class HostedDoor {

    /** As long as a login form may stay open. */
    static final int STRANGERS_SESSION_SECONDS = 1800;

    private static final String LOGIN = "/login";
    private static final String CHAIN = "springSecurityFilterChain";

    /** Behind the sessions, before everything else that answers. */
    private static final int PLACE = -100;

    @Bean
    PasswordHashes passwordHashes() {
        return new Argon2Hashes();
    }

    @Bean
    HostedSettings hostedSettings(Environment environment) {
        return HostedSettings.of(environment);
    }

    @Bean
    HostedStart hostedStart(Accounts accounts, AccountKeeping keeping, Askers askers, HostedSettings settings) {
        return new HostedStart(accounts, keeping, askers, settings);
    }

    @Bean
    DelegatingFilterProxyRegistrationBean door() {
        DelegatingFilterProxyRegistrationBean door = new DelegatingFilterProxyRegistrationBean(CHAIN);
        door.setOrder(PLACE);
        return door;
    }

    @Bean
    Denials denials(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        return new Denials(problems);
    }

    @Bean
    Limits limits(
            @Value("${campcloth.limits.per-minute:" + Limits.USUAL + "}") int perMinute,
            @Value("${campcloth.limits.costly-per-minute:" + Limits.USUAL_COSTLY + "}") int costly,
            @Value("${campcloth.limits.logins-per-minute:" + Limits.USUAL_LOGINS + "}") int logins) {
        return new Limits(perMinute, costly, logins, TimeMeter.SYSTEM_MILLISECONDS);
    }

    @Bean
    SecurityFilterChain chain(
            HttpSecurity http,
            Accounts accounts,
            Tokens tokens,
            Logins logins,
            Askers askers,
            Limits limits,
            Denials denials,
            HostedSettings settings,
            Vouching vouching,
            Clock clock,
            Environment environment) {
        if (settings.hasProvider()) {
            Provider.addTo(http, settings, vouching, askers, in());
        }
        return http.securityMatcher(isForTheDoor(environment))
                .securityContext(context -> context.securityContextRepository(new SessionAccounts(accounts, clock)))
                .authenticationProvider(new PasswordProvider(logins))
                .csrf(csrf -> csrf.ignoringRequestMatchers(Paths::isForPrograms, HostedDoor::isUnits))
                .headers(headers -> headers.defaultsDisabled().httpStrictTransportSecurity(Customizer.withDefaults()))
                .requestCache(RequestCacheConfigurer::disable)
                .formLogin(form -> form.loginPage(LOGIN)
                        .loginProcessingUrl(LOGIN)
                        .usernameParameter("name")
                        .passwordParameter("password")
                        .authenticationDetailsSource(BrowserMark::in)
                        .successHandler(inByPassword(logins))
                        .failureHandler(notIn()))
                .logout(logout -> logout.logoutSuccessUrl("/login?out"))
                .exceptionHandling(
                        denied -> denied.authenticationEntryPoint(denials).accessDeniedHandler(denials))
                // in this order: who it is, whether it comes too often, and only then is a body read
                .addFilterBefore(new VisitorFilter(), CsrfFilter.class)
                .addFilterBefore(new BearerFilter(tokens), CsrfFilter.class)
                .addFilterBefore(new LimitFilter(limits, denials), CsrfFilter.class)
                .addFilterBefore(new Readable(denials), CsrfFilter.class)
                .addFilterBefore(new AskerFilter(askers, HostedDoor::asker), ExceptionTranslationFilter.class)
                .authorizeHttpRequests(HostedDoor::whoMayComeWhere)
                .build();
    }

    /** Health and measurements on a port of their own are for whoever reaches that port, which has neither accounts nor limits. */
    private static RequestMatcher isForTheDoor(Environment environment) {
        boolean apart = ManagementPortType.get(environment) == ManagementPortType.DIFFERENT;
        return request ->
                !apart || request.getLocalPort() != environment.getProperty("local.management.port", Integer.class, -1);
    }

    private static void whoMayComeWhere(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry addresses) {
        addresses
                .requestMatchers(LOGIN, "/refused", "/preferences", "/error")
                .permitAll()
                .requestMatchers("/look/**", "/webjars/**", "/actuator/health/**", "/v3/api-docs/**")
                .permitAll()
                .requestMatchers("/account/password")
                .authenticated()
                .requestMatchers("/actuator/**", "/accounts/**", "/audit/**", "/api/accounts/**", "/api/audit/**")
                .hasRole(Role.ADMINISTRATOR.name())
                .requestMatchers("/cloths/import/**", "/api/cloths/import/**", "/api/jobs/lists")
                .hasRole(Role.KEEPER.name())
                .requestMatchers(HttpMethod.POST, "/demo/**")
                .hasRole(Role.ADMINISTRATOR.name())
                .requestMatchers(HostedDoor::isByLink)
                .permitAll()
                .anyRequest()
                .hasAnyRole(Role.MAKER.name(), Role.KEEPER.name(), Role.MARSHAL.name(), Role.ADMINISTRATOR.name());
    }

    /** A key opens nothing to an account whose password somebody else made: whoever has that would read on as its owner. */
    private static boolean isByLink(HttpServletRequest request) {
        Account account = LoggedIn.now();
        return Paths.isByLink(request) && (account == null || !account.oneTime());
    }

    private static Asker asker(HttpServletRequest request) {
        Account account = Paths.isLook(request) ? null : LoggedIn.now();
        return account == null ? Asker.STRANGER : account.asker();
    }

    /** The choice of units is kept in the browser alone, by strangers as well, who have no session for a token. */
    private static boolean isUnits(HttpServletRequest request) {
        return request.getRequestURI().equals("/preferences");
    }

    /** Whoever got in is led back through the page of the login, which knows where to. */
    private static AuthenticationSuccessHandler in() {
        return (request, response, in) -> response.sendRedirect(LOGIN + back(request));
    }

    /** The same, with what the browser is known by the next time. */
    private static AuthenticationSuccessHandler inByPassword(Logins logins) {
        return (request, response, in) -> {
            if (in instanceof LoggedIn known) {
                logins.mark(known.account()).ifPresent(mark -> BrowserMark.keep(mark, request, response));
            }
            in().onAuthenticationSuccess(request, response, in);
        };
    }

    /** Whoever did not get in sees the form again, with what came of it. */
    private static AuthenticationFailureHandler notIn() {
        return (request, response, failure) -> {
            Logins.Outcome outcome =
                    failure instanceof PasswordProvider.NotIn not ? not.outcome() : new Logins.Outcome.Wrong();
            request.setAttribute(Logins.Outcome.class.getName(), outcome);
            request.getRequestDispatcher(LOGIN).forward(request, response);
        };
    }

    private static String back(HttpServletRequest request) {
        String back = request.getParameter("back");
        return back == null || back.isEmpty() ? "" : "?back=" + URLEncoder.encode(back, StandardCharsets.UTF_8);
    }
}
