package campcloth.door;

import campcloth.access.AccountKeeping;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.figure.Refused;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.InitializingBean;

/**
 * A hosted service starts only where somebody can log in to keep the accounts; the first start makes that account where it is told a password.
 * This happens while the service is put together, so before the demo is put in: that stays common.
 */
final class HostedStart implements InitializingBean {

    private static final Logger LOG = LoggerFactory.getLogger(HostedStart.class);

    private final Accounts accounts;
    private final AccountKeeping keeping;
    private final Askers askers;
    private final HostedSettings settings;

    HostedStart(Accounts accounts, AccountKeeping keeping, Askers askers, HostedSettings settings) {
        this.accounts = accounts;
        this.keeping = keeping;
        this.askers = askers;
        this.settings = settings;
    }

    @Override
    public void afterPropertiesSet() {
        if (accounts.hasAdministrator()) {
            return;
        }
        if (!settings.adminPassword().isEmpty()) {
            makeAdministrator();
        } else if (!settings.vouchesForAdministrators()) {
            throw new NotStarted(
                    "In hosted mode people log in, and there is no account yet that could let them in.",
                    settings.wayIn());
        }
    }

    private void makeAdministrator() {
        try {
            askers.as(
                    Asker.LOCAL,
                    () -> keeping.makeAdministrator(
                            new AccountName(settings.adminName()),
                            settings.adminPassword(),
                            "CAMPCLOTH_ADMIN_PASSWORD"));
            LOG.info("Made the account {}; CAMPCLOTH_ADMIN_PASSWORD is not needed any more", settings.adminName());
        } catch (Refused refused) {
            if (!accounts.hasAdministrator()) {
                throw new NotStarted(
                        "The first account cannot be made: " + refused.getMessage() + ".",
                        "Set CAMPCLOTH_ADMIN_NAME and CAMPCLOTH_ADMIN_PASSWORD to what can be used, and start again.");
            }
        }
    }
}
