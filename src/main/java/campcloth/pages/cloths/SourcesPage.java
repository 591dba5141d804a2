package campcloth.pages.cloths;

import campcloth.figure.Source;
import campcloth.figure.Sources;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Where the figures come from. */
@Controller
class SourcesPage {

    /** The sources of one kind, by id. */
    public record OfAKind(Source.Kind kind, List<Source> sources) {}

    private final Sources sources;

    SourcesPage(Sources sources) {
        this.sources = sources;
    }

    @GetMapping("/cloths/sources")
    String all(Model model) {
        model.addAttribute(
                "kinds",
                Arrays.stream(Source.Kind.values())
                        .map(this::of)
                        .filter(kind -> !kind.sources().isEmpty())
                        .toList());
        return "cloths/sources";
    }

    private OfAKind of(Source.Kind kind) {
        return new OfAKind(
                kind,
                sources.all().stream()
                        .filter(source -> source.kind() == kind)
                        .sorted(Comparator.comparing(Source::id))
                        .toList());
    }
}
