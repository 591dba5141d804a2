package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.cloth.OutfitPart;
import campcloth.event.Season;
import campcloth.pages.plan.AskedForm;
import campcloth.pages.plan.PlainCloth;
import campcloth.pages.plan.WornForm;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.format.support.DefaultFormattingConversionService;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.ServletRequestDataBinder;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** How an address becomes the form that event and garment are asked by, and back. */
class AskedBindingTest {

    private final AskedForm form = new AskedForm();

    @AfterEach
    void forget() {
        RequestContextHolder.resetRequestAttributes();
    }

    @Test
    void numbersAreTakenInTheUnitsTheyWereTypedIn() {
        bound(Map.of(
                "typedIn", "imperial", "measures[chestCm]", "38,5", "evening.fireDistanceM", "10", "day.airC", "21.5"));
        assertThat(form.measures.get("chestCm")).isCloseTo(38.5 * 2.54, within(1e-9));
        assertThat(form.evening.fireDistanceM).isCloseTo(3.048, within(1e-9));
        assertThat(form.day.airC).isEqualTo(21.5);
    }

    @Test
    void whatItWritesIsReadAsTheSame() {
        bound(Map.of(
                "season", "AUTUMN",
                "design", "tunic",
                "size", "W-M",
                "measures[chestCm]", "98.25",
                "measures[lengthCm]", "",
                "nextToSkin", "no",
                "day.sun", "PART",
                "evening.fireRole", "COOKING",
                "evening.fireDistanceM", "0.8",
                "night.airC", "-3"));
        form.under.add(shirt());
        form.over.add(new WornForm());
        form.over.add(cloak());
        String written = form.query();
        assertThat(written)
                .contains("measures%5BchestCm%5D=98.25")
                .doesNotContain("lengthCm")
                .doesNotContain("typedIn");
        AskedForm again = new AskedForm();
        MockHttpServletRequest request = new MockHttpServletRequest();
        for (String part : written.split("&")) {
            String[] sides = URLDecoder.decode(part, StandardCharsets.UTF_8).split("=");
            request.addParameter(sides[0], sides[1]);
        }
        assertThat(bind(again, request).hasErrors()).isFalse();
        form.over.remove(0);
        assertThat(again).usingRecursiveComparison().isEqualTo(withoutEmpty(form));
        assertThat(again.season).isEqualTo(Season.AUTUMN);
        assertThat(again.nextToSkin).isFalse();
        assertThat(again.query()).isEqualTo(written);
    }

    @Test
    void whatIsNoNumberIsToldAtItsField() {
        BindingResult result = bound(Map.of("measures[chestCm]", "wide", "night.airC", "1e9", "season", "MUD"));
        assertThat(result.hasFieldErrors("measures[chestCm]")).isTrue();
        assertThat(result.hasFieldErrors("night.airC")).isTrue();
        assertThat(result.hasFieldErrors("season")).isTrue();
        assertThat(result.getErrorCount()).isEqualTo(3);
    }

    @Test
    void whatIsNoLayerIsToldAtItsRow() {
        BindingResult result =
                bound(Map.of("under[1].kind", "SPACESUIT", "over[0].cloth", "lead", "over[0].when", "X"));
        assertThat(result.hasFieldErrors("under[1].kind")).isTrue();
        assertThat(result.hasFieldErrors("over[0].cloth")).isTrue();
        assertThat(result.hasFieldErrors("over[0].when")).isTrue();
        assertThat(result.getErrorCount()).isEqualTo(3);
    }

    private static WornForm shirt() {
        WornForm shirt = new WornForm();
        shirt.kind = OutfitPart.Kind.SHIRT;
        shirt.named = "shirt linen & <b>";
        return shirt;
    }

    private static WornForm cloak() {
        WornForm cloak = new WornForm();
        cloak.kind = OutfitPart.Kind.CLOAK;
        cloak.cloth = PlainCloth.WOOL_HEAVY;
        cloak.when = WornForm.When.COOL;
        return cloak;
    }

    private static AskedForm withoutEmpty(AskedForm form) {
        form.measures.values().removeIf(value -> value == null);
        return form;
    }

    private BindingResult bound(Map<String, String> typed) {
        MockHttpServletRequest request = new MockHttpServletRequest();
        request.setParameters(typed);
        return bind(form, request);
    }

    private static BindingResult bind(AskedForm form, MockHttpServletRequest request) {
        RequestContextHolder.setRequestAttributes(new ServletRequestAttributes(request));
        DefaultFormattingConversionService conversion = new DefaultFormattingConversionService();
        ServletRequestDataBinder binder = new ServletRequestDataBinder(form, "form");
        binder.setConversionService(conversion);
        new EveryPage(new Askers(Asker.LOCAL)).forms(binder);
        binder.bind(request);
        return binder.getBindingResult();
    }
}
