package campcloth.pages.accounts;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Askers;
import campcloth.access.Mode;
import campcloth.pages.NotHere;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The account that looks at a page. */
@Component
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class Me {

    private final Askers askers;
    private final Accounts accounts;

    Me(Askers askers, Accounts accounts) {
        this.askers = askers;
        this.accounts = accounts;
    }

    Account account() {
        return askers.now().account().flatMap(accounts::byId).orElseThrow(() -> new NotHere("account"));
    }
}
