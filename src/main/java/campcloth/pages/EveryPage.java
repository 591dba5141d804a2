package campcloth.pages;

import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.access.Visitor;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.BeanUtils;
import org.springframework.core.MethodParameter;
import org.springframework.ui.Model;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerMapping;

/** What every page and every form has. Forms are classes with public fields; an empty field is null. */
@ControllerAdvice("campcloth.pages")
class EveryPage {

    static final String VISITOR = "visitor";

    private final Askers askers;

    EveryPage(Askers askers) {
        this.askers = askers;
    }

    @InitBinder
    void forms(WebDataBinder binder) {
        binder.initDirectFieldAccess();
        if (binder.getTarget() instanceof Units) {
            // the units come from the reader's choice; no parameter of a form, such as a name, is for them
            binder.setDisallowedFields("*");
        }
        binder.addCustomFormatter(new TypedNumbers.Plain(), Double.class);
        if (binder.getTarget() != null) {
            TypedFields.of(binder.getTarget().getClass())
                    .forEach((path, measure) -> binder.addCustomFormatter(new TypedNumbers(measure), path));
        }
        binder.registerCustomEditor(String.class, new TypedText());
    }

    /** Forms are there before they are filled: what the framework would make itself loses the ways of reading set above. */
    @ModelAttribute
    void emptyForms(HttpServletRequest request, Model model) {
        if (request.getAttribute(HandlerMapping.BEST_MATCHING_HANDLER_ATTRIBUTE) instanceof HandlerMethod page) {
            for (MethodParameter parameter : page.getMethodParameters()) {
                ModelAttribute form = parameter.getParameterAnnotation(ModelAttribute.class);
                if (form != null && TypedFields.isForm(parameter.getParameterType())) {
                    model.addAttribute(form.name(), BeanUtils.instantiateClass(parameter.getParameterType()));
                }
            }
        }
    }

    @ModelAttribute("units")
    Units units(HttpServletRequest request) {
        return ReadersUnits.shown(request);
    }

    /** Who looks at the page, where people log in. */
    @ModelAttribute(VISITOR)
    @Nullable
    Visitor visitor(HttpServletRequest request) {
        return visitorOf(request);
    }

    static @Nullable Visitor visitorOf(HttpServletRequest request) {
        return request.getAttribute(Visitor.ATTRIBUTE) instanceof Visitor visitor ? visitor : null;
    }

    /** By name, so that pages leave out what the reader cannot do. */
    @ModelAttribute("readersRoles")
    Set<String> readersRoles() {
        return askers.now().roles().stream().map(Role::name).collect(Collectors.toSet());
    }

    /** The keys of shared links that this page was asked for with, to be put behind addresses that need them; empty without. */
    @ModelAttribute("withKey")
    String withKey(HttpServletRequest request) {
        return LinkKeys.of(request, "?");
    }

    /** The same behind addresses that ask something already. */
    @ModelAttribute("andKey")
    String andKey(HttpServletRequest request) {
        return LinkKeys.of(request, "&");
    }

    /** The address of this page, to come back to. */
    @ModelAttribute("here")
    String here(HttpServletRequest request) {
        String query = request.getQueryString();
        return request.getRequestURI() + (query == null ? "" : "?" + query);
    }
}
