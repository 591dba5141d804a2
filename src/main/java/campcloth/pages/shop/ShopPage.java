package campcloth.pages.shop;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import campcloth.fire.Boundary;
import campcloth.fire.ClothingUse;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.pages.OnceOnly;
import campcloth.pages.Units;
import campcloth.pages.plan.AskedForm;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A bale in hand: one form, one answer; nothing is kept until somebody asks for it. */
@Controller
class ShopPage {

    /** Stands in every address that the form writes: whoever comes without it has not asked yet. */
    private static final String ASKED = "label";

    /** Where it leads to when it is kept, as the button says that was pressed: to the cloth, or on to the plan. */
    private static final String CLOTH = "cloth";

    private static final String PLAN = "plan";
    private static final String KEPT_CURRENCY = "EUR";
    private static final int LONGEST_NOTE = 1900;

    private final ShopAnswers answers;
    private final ShopChoices choices;
    private final Cloths cloths;
    private final OnceOnly once;

    ShopPage(ShopAnswers answers, ShopChoices choices, Cloths cloths, OnceOnly once) {
        this.answers = answers;
        this.choices = choices;
        this.cloths = cloths;
        this.once = once;
    }

    @GetMapping("/shop")
    String shop(
            @ModelAttribute("form") ShopForm form,
            BindingResult binding,
            @ModelAttribute("units") Units units,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        choices.into(model, form);
        model.addAttribute("figures", new ShopFigures(units));
        model.addAttribute("carried", carried(form, binding));
        model.addAttribute("swapped", request.getHeader("HX-Request") != null);
        if (request.getParameter(ASKED) != null) {
            answer(form, binding, model, request);
            if (binding.hasErrors()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            }
        }
        return "shop/shop";
    }

    /** Fields without a line of their own, with their values in the reader's units. */
    private static List<Choice> carried(ShopForm form, BindingResult binding) {
        return form.carried().stream()
                .map(path -> new Choice(path, String.valueOf(binding.getFieldValue(path))))
                .toList();
    }

    private void answer(ShopForm form, BindingResult binding, Model model, HttpServletRequest request) {
        Optional<Boundary> beyond = Optional.ofNullable(form.use).flatMap(ClothingUse::boundary);
        beyond.ifPresent(boundary -> model.addAttribute("beyond", boundary));
        if (beyond.isEmpty() && !binding.hasErrors()) {
            FormErrors.caught(binding, AskedForm::field, () -> answers.of(form))
                    .ifPresent(answer -> into(model, answer, request));
        }
    }

    private static void into(Model model, ShopAnswer answer, HttpServletRequest request) {
        model.addAttribute("answer", answer);
        model.addAttribute("keep", "/shop/keep?" + request.getQueryString());
        model.addAttribute(
                "meant",
                answer.label().place().map(LabelPlace::meant).orElse(List.of()).stream()
                        .map(text -> new Choice(withLabel(request, text), text))
                        .toList());
    }

    /** The same question with another label. */
    private static String withLabel(HttpServletRequest request, String label) {
        StringJoiner query = new StringJoiner("&", "/shop?", "#answer");
        request.getParameterMap()
                .forEach((name, values) ->
                        query.add(encoded(name) + "=" + encoded(name.equals(ASKED) ? label : values[0])));
        return query.toString();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** Keeps the cloth that stands for the bale; the address behind says which, as it was asked about. */
    @PostMapping("/shop/keep")
    String keep(
            @ModelAttribute("form") ShopForm form,
            BindingResult binding,
            @RequestParam String name,
            @RequestParam(defaultValue = CLOTH) String then,
            HttpServletRequest request) {
        Optional<Cloth> cloth = binding.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(binding, AskedForm::field, () -> answers.cloth(form));
        if (cloth.isEmpty()) {
            return "redirect:/shop?" + request.getQueryString();
        }
        return "redirect:" + once.made(() -> after(cloths.add(named(cloth.get(), name, form)), then, form));
    }

    private static String after(KeptCloth kept, String then, ShopForm form) {
        return then.equals(PLAN) ? "/plan/buy?cloth=" + kept.id() + "&" + form.query() : "/cloths/" + kept.id();
    }

    private static Cloth named(Cloth cloth, String name, ShopForm form) {
        EnumMap<Property, Figure> figures = new EnumMap<>(Property.class);
        figures.putAll(cloth.figures());
        if (form.currency != null && !form.currency.equals(KEPT_CURRENCY)) {
            figures.remove(Property.PRICE_PER_METRE);
        }
        return cloth.with(figures).named(name, note(form.label));
    }

    private static String note(@Nullable String label) {
        if (label == null) {
            return "Seen in a shop, without a label.";
        }
        return "Seen in a shop. Its label: "
                + (label.length() > LONGEST_NOTE ? label.substring(0, Words.cut(label, LONGEST_NOTE)) : label);
    }
}
