package campcloth.pages.accounts;

import campcloth.access.Account;
import campcloth.access.Role;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** An account as an administrator makes or changes it. */
public class AccountForm {

    public @Nullable String name;

    public boolean maker;

    public boolean keeper;

    public boolean marshal;

    public boolean administrator;

    public boolean disabled;

    public @Nullable Long version;

    static AccountForm of(Account account) {
        AccountForm form = new AccountForm();
        form.name = account.name().text();
        form.maker = account.roles().contains(Role.MAKER);
        form.keeper = account.roles().contains(Role.KEEPER);
        form.marshal = account.roles().contains(Role.MARSHAL);
        form.administrator = account.roles().contains(Role.ADMINISTRATOR);
        form.disabled = account.disabled();
        form.version = account.version();
        return form;
    }

    Set<Role> roles() {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        add(roles, maker, Role.MAKER);
        add(roles, keeper, Role.KEEPER);
        add(roles, marshal, Role.MARSHAL);
        add(roles, administrator, Role.ADMINISTRATOR);
        return roles;
    }

    private static void add(Set<Role> roles, boolean ticked, Role role) {
        if (ticked) {
            roles.add(role);
        }
    }
}
