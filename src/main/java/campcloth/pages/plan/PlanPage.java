package campcloth.pages.plan;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The form for event and garment. */
@Controller
class PlanPage {

    static final int UNUSABLE = 422;

    private final GarmentChoices choices;

    PlanPage(GarmentChoices choices) {
        this.choices = choices;
    }

    @GetMapping("/plan")
    String form(
            @ModelAttribute("form") AskedForm form, BindingResult binding, Model model, HttpServletResponse response) {
        if (form.use().boundary().isPresent()) {
            return outside(form, model);
        }
        if (binding.hasErrors()) {
            response.setStatus(UNUSABLE);
        }
        choices.into(model, form, binding);
        return "plan/form";
    }

    /** What is not advised on gets no ranking, only whom to ask. */
    static String outside(AskedForm form, Model model) {
        model.addAttribute("boundary", form.use().boundary().orElseThrow());
        model.addAttribute("use", form.use().name());
        return "plan/outside";
    }
}
