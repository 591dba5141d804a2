package campcloth.pages.cloths;

import campcloth.cloth.ClothFacets;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.WeightClass;
import campcloth.event.Season;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.fire.FireGrade;
import campcloth.pages.FormErrors;
import campcloth.pages.Units;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The search in the catalogue. */
@Controller
class ClothsPage {

    private static final int PAGE_SIZE = 20;

    private final Cloths cloths;
    private final Fibres fibres;

    ClothsPage(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    /**
     * What a page of the list shows.
     *
     * @param total how many match in all
     * @param nearMatches whether these are only named much alike
     * @param first number of the first hit, from 1
     * @param previous number of the page before; empty on the first
     * @param next number of the page after; empty on the last
     */
    public record Found(
            List<Hit> hits,
            long total,
            boolean nearMatches,
            int first,
            Optional<Integer> previous,
            Optional<Integer> next) {

        public int last() {
            return first + hits.size() - 1;
        }
    }

    @GetMapping("/cloths")
    String list(
            @ModelAttribute("form") SearchForm form,
            BindingResult binding,
            @ModelAttribute("units") Units units,
            @RequestParam @Nullable String removed,
            Model model,
            HttpServletResponse response) {
        form.tidy();
        ClothSearch asked =
                FormErrors.caught(binding, () -> form.search(fibres)).orElse(ClothSearch.EVERYTHING);
        if (binding.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        Cloths.Page page = cloths.page(asked, form.before(), PAGE_SIZE);
        model.addAttribute("found", found(page, form, units));
        model.addAttribute("facets", facets(page.facets(), form));
        model.addAttribute("prices", page.facets().pricePerMetre());
        model.addAttribute("chosen", chosen(form, page));
        model.addAttribute("wordsAlone", form.wordsAlone());
        model.addAttribute("withoutWords", form.withoutWords());
        model.addAttribute("origins", KeptCloth.Origin.values());
        model.addAttribute("removed", removed != null);
        return "cloths/list";
    }

    /** From the list to the cloths that are ticked there; what was looked for does not matter any more. */
    @GetMapping(value = "/cloths", params = "compare")
    String compare(@RequestParam(defaultValue = "") List<String> cloth) {
        return "redirect:" + new Address("/cloths/compare").addAll("cloth", cloth);
    }

    private static Found found(Cloths.Page page, SearchForm form, Units units) {
        int before = form.before();
        boolean more = (long) (before + 1) * PAGE_SIZE < page.total();
        return new Found(
                page.cloths().stream().map(kept -> Hit.of(kept, units)).toList(),
                page.total(),
                page.nearMatches(),
                before * PAGE_SIZE + 1,
                before == 0 ? Optional.empty() : Optional.of(before),
                more ? Optional.of(before + 2) : Optional.empty());
    }

    /** Cloths chosen for a comparison before, that do not stand on this page. */
    private List<KeptCloth> chosen(SearchForm form, Cloths.Page page) {
        return cloths.byIds(form.cloth).stream()
                .filter(kept -> page.cloths().stream().noneMatch(hit -> hit.id().equals(kept.id())))
                .toList();
    }

    private List<FacetView> facets(ClothFacets facets, SearchForm form) {
        return List.of(
                FacetView.of("fibre", facets.fibre(), List.of(), form.fibre, this::fibreName),
                known("weightClass", facets.weightClass(), WeightClass.values(), form.weightClass),
                known("season", facets.season(), Season.values(), form.season),
                known("fireGrade", facets.fireGrade(), FireGrade.values(), form.fireGrade));
    }

    private static FacetView known(
            String name, ClothFacets.Facet facet, Enum<?>[] all, List<? extends Enum<?>> chosen) {
        return FacetView.of(
                name,
                facet,
                Arrays.stream(all).<String>map(Enum::name).toList(),
                chosen.stream().<String>map(Enum::name).toList(),
                value -> "");
    }

    private String fibreName(String key) {
        return fibres.named(key).map(Fibre::name).orElse(key);
    }
}
