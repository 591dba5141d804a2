package campcloth.door;

import org.springframework.core.env.Environment;

/**
 * What a hosted service is told from outside.
 *
 * @param adminPassword makes the first account; empty where none is told
 * @param issuer address of the OpenID Connect provider; empty where there is none
 * @param admins subjects or addresses of mail of that provider that become administrators, separated by commas
 */
record HostedSettings(
        String adminName, String adminPassword, String issuer, String clientId, String clientSecret, String admins) {

    static HostedSettings of(Environment environment) {
        return new HostedSettings(
                environment.getProperty("campcloth.admin-name", "administrator"),
                environment.getProperty("campcloth.admin-password", ""),
                environment.getProperty("campcloth.oidc-issuer", "").strip(),
                environment.getProperty("campcloth.oidc-client-id", ""),
                environment.getProperty("campcloth.oidc-client-secret", ""),
                environment.getProperty("campcloth.oidc-admins", ""));
    }

    boolean hasProvider() {
        return !issuer.isEmpty() && !clientId.isEmpty();
    }

    /** Whether somebody will keep the accounts once they log in through the provider. */
    boolean vouchesForAdministrators() {
        return hasProvider() && !admins.isBlank();
    }

    String wayIn() {
        return "Set CAMPCLOTH_ADMIN_PASSWORD for the first start: it makes the account administrator (or CAMPCLOTH_ADMIN_NAME). Or"
                + " set CAMPCLOTH_OIDC_ISSUER, CAMPCLOTH_OIDC_CLIENT_ID and CAMPCLOTH_OIDC_CLIENT_SECRET, and name in CAMPCLOTH_OIDC_ADMINS"
                + " who keeps the accounts. For a service without logins, on this machine alone, set CAMPCLOTH_MODE=local.";
    }

    /** Secrets do not belong into logs. */
    @Override
    public String toString() {
        return "HostedSettings[...]";
    }
}
