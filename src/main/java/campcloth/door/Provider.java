package campcloth.door;

import campcloth.access.Askers;
import campcloth.access.Vouching;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.oauth2.client.OAuth2AuthorizedClient;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.security.oauth2.client.registration.ClientRegistrations;
import org.springframework.security.oauth2.client.registration.InMemoryClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.SupplierClientRegistrationRepository;
import org.springframework.security.oauth2.client.web.OAuth2AuthorizedClientRepository;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;

/**
 * Logging in through an OpenID Connect provider (OpenID Connect Core 1.0, authorization code flow with PKCE). What the provider says of itself
 * is asked for when somebody first logs in that way, so that the service starts without it.
 */
final class Provider {

    /** Names the provider in addresses: {@code /oauth2/authorization/oidc}, {@code /login/oauth2/code/oidc}. */
    private static final String NAME = "oidc";

    private Provider() {}

    static void addTo(
            HttpSecurity http,
            HostedSettings settings,
            Vouching vouching,
            Askers askers,
            AuthenticationSuccessHandler in) {
        http.oauth2Login(login -> login.loginPage("/login")
                .clientRegistrationRepository(new SupplierClientRegistrationRepository(
                        () -> new InMemoryClientRegistrationRepository(registration(settings))))
                .authorizedClientRepository(new Nowhere())
                .userInfoEndpoint(info -> info.oidcUserService(new VouchedUsers(vouching, askers, settings)))
                .successHandler(in)
                .failureHandler((request, response, failure) -> response.sendRedirect("/login?failed")));
    }

    private static ClientRegistration registration(HostedSettings settings) {
        return ClientRegistrations.fromIssuerLocation(settings.issuer())
                .registrationId(NAME)
                .clientId(settings.clientId())
                .clientSecret(settings.clientSecret())
                .scope("openid", "profile", "email")
                .build();
    }

    /** We ask the provider who somebody is and for nothing else: what it hands out beside that is not kept. */
    private static final class Nowhere implements OAuth2AuthorizedClientRepository {

        @Override
        public <T extends OAuth2AuthorizedClient> @Nullable T loadAuthorizedClient(
                String name, Authentication whose, HttpServletRequest request) {
            return null;
        }

        @Override
        public void saveAuthorizedClient(
                OAuth2AuthorizedClient client,
                Authentication whose,
                HttpServletRequest request,
                HttpServletResponse response) {}

        @Override
        public void removeAuthorizedClient(
                String name, Authentication whose, HttpServletRequest request, HttpServletResponse response) {}
    }
}
