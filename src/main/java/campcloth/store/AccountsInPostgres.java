package campcloth.store;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.AuditLog;
import campcloth.access.Inheritance;
import campcloth.access.Role;
import campcloth.figure.Refused;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The accounts over PostgreSQL. Whoever makes or changes one takes the lock of all of them first: there are few, and the last administrator has to stay. */
@Component
class AccountsInPostgres implements Accounts {

    static final String COLUMNS =
            "account.id, account.name, account.roles, account.disabled, account.one_time, account.stamp, account.made_at, account.version";
    private static final String ACCOUNT = "account";
    private static final String CHANGED = "changed";

    private final JdbcTemplate sql;
    private final AuditLog audit;
    private final ObjectProvider<Inheritance> inheritance;
    private final Clock clock;

    AccountsInPostgres(JdbcTemplate sql, AuditLog audit, ObjectProvider<Inheritance> inheritance, Clock clock) {
        this.sql = sql;
        this.audit = audit;
        this.inheritance = inheritance;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Account> byId(UUID id) {
        return one("id = ?", id);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Account> byName(AccountName name) {
        return one("name_key = ?", name.key());
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Account> bySubject(Proof.Vouched vouched) {
        return one("issuer = ? and subject = ?", vouched.issuer(), vouched.subject());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Account> all() {
        return sql.query("select " + COLUMNS + " from account order by name_key", AccountsInPostgres::account);
    }

    @Override
    @Transactional(readOnly = true)
    public boolean hasAdministrator() {
        return administrators() > 0;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<String> passwordHash(UUID id) {
        return sql
                .queryForList(
                        "select password_hash from account where id = ? and password_hash is not null",
                        String.class,
                        id)
                .stream()
                .findFirst();
    }

    @Override
    @Transactional
    public Account make(AccountName name, Set<Role> roles, Proof proof) {
        lock();
        oneRole(roles);
        Optional<Proof.Vouched> vouched = proof instanceof Proof.Vouched given ? Optional.of(given) : Optional.empty();
        Optional<Account> there = vouched.flatMap(this::bySubject);
        if (there.isPresent()) {
            // the same person came twice at once
            return there.get();
        }
        if (one("name_key = ?", name.key()).isPresent()) {
            throw Refused.of("name", "is taken", "choose another");
        }
        boolean first =
                Boolean.TRUE.equals(sql.queryForObject("select not exists (select 1 from account)", Boolean.class));
        UUID id = UUID.randomUUID();
        Proof.Password password = proof instanceof Proof.Password given ? given : new Proof.Password("", false);
        sql.update(
                """
                insert into account (id, name, name_key, roles, password_hash, one_time, issuer, subject, made_at)
                values (?, ?, ?, ?, nullif(?, ''), ?, ?, ?, ?)""",
                id,
                name.text(),
                name.key(),
                words(roles),
                password.hash(),
                password.oneTime(),
                vouched.map(Proof.Vouched::issuer).orElse(null),
                vouched.map(Proof.Vouched::subject).orElse(null),
                Timestamp.from(clock.instant()));
        if (first && roles.contains(Role.ADMINISTRATOR)) {
            inheritance.orderedStream().forEach(heirloom -> heirloom.leaveTo(id));
        }
        audit.note("made", ACCOUNT, id.toString(), name.text() + " as " + told(roles));
        return one("id = ?", id).orElseThrow();
    }

    @Override
    @Transactional
    public Change change(UUID id, long expectedVersion, Set<Role> roles, boolean disabled) {
        lock();
        oneRole(roles);
        Optional<Account> before = one("id = ?", id);
        if (before.isEmpty()) {
            return new Change.Missing();
        }
        if (before.get().version() != expectedVersion) {
            return new Change.Stale(before.get().version());
        }
        sql.update("""
                update account set roles = ?, disabled = ?, version = version + 1,
                    stamp = stamp + case when ? and not disabled then 1 else 0 end where id = ?""", words(roles), disabled, disabled, id);
        if (before.get().roles().contains(Role.ADMINISTRATOR) && administrators() == 0) {
            throw Refused.of(
                    "roles",
                    "would leave nobody who keeps the accounts",
                    "make another account an administrator first");
        }
        audit.note(
                CHANGED,
                ACCOUNT,
                id.toString(),
                before.get().name().text() + " to " + told(roles) + (disabled ? ", disabled" : ""));
        return new Change.Done(one("id = ?", id).orElseThrow());
    }

    @Override
    @Transactional
    public void setPassword(UUID id, String hash, boolean oneTime) {
        sql.update(
                "update account set password_hash = ?, one_time = ?, stamp = stamp + 1 where id = ?",
                hash,
                oneTime,
                id);
        if (oneTime) {
            sql.update("delete from access_token where account_id = ?", id);
        }
        audit.note(
                CHANGED,
                ACCOUNT,
                id.toString(),
                oneTime ? "a one-time password; sessions and tokens ended" : "the password; sessions ended");
    }

    @Override
    @Transactional
    public void rehash(UUID id, String hash) {
        sql.update("update account set password_hash = ? where id = ?", hash, id);
    }

    static Account account(ResultSet row, int number) throws SQLException {
        return new Account(
                row.getObject("id", UUID.class),
                new AccountName(row.getString("name")),
                roles(row.getString("roles")),
                row.getBoolean("disabled"),
                row.getBoolean("one_time"),
                row.getLong("stamp"),
                row.getTimestamp("made_at").toInstant(),
                row.getLong("version"));
    }

    private Optional<Account> one(String condition, Object... values) {
        return sql
                .query("select " + COLUMNS + " from account where " + condition, AccountsInPostgres::account, values)
                .stream()
                .findFirst();
    }

    private int administrators() {
        return (int)
                sql
                        .query("select " + COLUMNS + " from account where not disabled", AccountsInPostgres::account)
                        .stream()
                        .filter(account -> account.roles().contains(Role.ADMINISTRATOR))
                        .count();
    }

    private void lock() {
        sql.execute("lock table account in share row exclusive mode");
    }

    private static void oneRole(Set<Role> roles) {
        if (roles.isEmpty()) {
            throw Refused.of("roles", "are none", "give at least one; MAKER is the least");
        }
    }

    static Set<Role> roles(String words) {
        return Arrays.stream(words.split(","))
                .filter(word -> !word.isEmpty())
                .map(Role::valueOf)
                .collect(Collectors.toSet());
    }

    /** As people read them in the audit log. */
    private static String told(Set<Role> roles) {
        return words(roles).toLowerCase(Locale.ROOT).replace(",", ", ");
    }

    private static String words(Set<Role> roles) {
        return roles.stream().sorted().map(Role::name).collect(Collectors.joining(","));
    }
}
