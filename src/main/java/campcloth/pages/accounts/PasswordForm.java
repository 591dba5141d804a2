package campcloth.pages.accounts;

import jakarta.servlet.http.HttpServletRequest;

/**
 * A password to be changed. Its fields are places for what is wrong alone: what was typed is read as it is, spaces and all, and never
 * shown again.
 */
public class PasswordForm {

    public String now = "";

    public String next = "";

    public String again = "";

    static String typed(HttpServletRequest request, String field) {
        String typed = request.getParameter("typed-" + field);
        return typed == null ? "" : typed;
    }
}
