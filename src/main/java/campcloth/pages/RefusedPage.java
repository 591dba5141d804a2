package campcloth.pages;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Where a filter leads to what it refuses, so that it is told on a page like everything else. Opened by itself, there is nothing here. */
@Controller
class RefusedPage {

    private static final String ADDRESS = "/refused";

    @RequestMapping(ADDRESS)
    String refused(HttpServletRequest request) {
        if (request.getAttribute(RuntimeException.class.getName()) instanceof RuntimeException refusal) {
            throw refusal;
        }
        throw new NotHere("page");
    }

    static boolean isIt(HttpServletRequest request) {
        return request.getRequestURI().equals(ADDRESS);
    }
}
