package campcloth.pages;

import campcloth.figure.Sources;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What a figure names as its source, for a page to tell by its title. */
@ControllerAdvice("campcloth.pages")
class CitedSources {

    private final Sources sources;

    CitedSources(Sources sources) {
        this.sources = sources;
    }

    @ModelAttribute("cites")
    Sources cites() {
        return sources;
    }
}
