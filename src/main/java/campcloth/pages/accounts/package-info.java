/** Logging in, one's own account, and the accounts and the audit log for administrators; in a hosted service alone. */
@NullMarked
package campcloth.pages.accounts;

import org.jspecify.annotations.NullMarked;
