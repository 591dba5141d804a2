package campcloth.pages.lists;

import campcloth.figure.Refused;
import campcloth.job.Job;
import campcloth.job.Jobs;
import campcloth.job.TooManyJobs;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.pages.NotHere;
import campcloth.supply.AskedList;
import campcloth.supply.ListDesk;
import campcloth.supply.ListJobs;
import campcloth.supply.ListJobs.KeptList;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.multipart.MultipartFile;

/**
 * A supplier's list: sent once, looked at, taken over when its sender says so, told as it goes. The work on it is a job, so that it
 * goes on whichever instance is asked, and when the service starts again.
 */
@Controller
class ImportPage {

    private static final String FORM = "lists/import";
    private static final String RETRY_SECONDS = "15";

    /** How soon a page without scripts asks again how far a list has come. */
    private static final int AGAIN_IN_SECONDS = 2;

    private final ListJobs lists;
    private final Jobs jobs;
    private final MessageSource texts;

    ImportPage(ListJobs lists, Jobs jobs, MessageSource texts) {
        this.lists = lists;
        this.jobs = jobs;
        this.texts = texts;
    }

    @ModelAttribute("onBadRows")
    List<Choice> onBadRows(Locale locale) {
        return Arrays.stream(OnBadRow.values())
                .sorted(Comparator.reverseOrder())
                .map(way -> new Choice(way.name(), texts.getMessage("lists.bad." + way, null, locale)))
                .toList();
    }

    @GetMapping("/cloths/import")
    String form(@ModelAttribute("form") ImportForm form) {
        return FORM;
    }

    @PostMapping(path = "/cloths/import", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    String send(
            @ModelAttribute("form") ImportForm form, BindingResult errors, Model model, HttpServletResponse response)
            throws IOException {
        Optional<ListOrder> order = errors.hasErrors() ? Optional.empty() : FormErrors.caught(errors, form::order);
        Optional<MultipartFile> file = Optional.ofNullable(form.file).filter(sent -> !sent.isEmpty());
        if (file.isEmpty()) {
            errors.rejectValue("file", "lists.file.missing");
        }
        if (order.isEmpty() || file.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return FORM;
        }
        try {
            return "redirect:" + address(handedIn(file.get(), order.get(), form.onBadRow));
        } catch (TooManyJobs full) {
            errors.reject("lists.full");
            busy(response);
            return FORM;
        }
    }

    private Job handedIn(MultipartFile file, ListOrder order, OnBadRow onBadRow) throws IOException {
        String name = file.getOriginalFilename();
        try (Spool spool = new Spool();
                InputStream bytes = file.getInputStream()) {
            if (!spool.take(bytes, ListDesk.MOST_BYTES)) {
                throw Refused.of("file", "is over 16 MiB", "send the list in parts");
            }
            return lists.add(new AskedList(name == null ? "" : name, order, onBadRow, true), spool);
        }
    }

    @GetMapping("/cloths/import/{id}")
    String look(@PathVariable String id, Model model) {
        return shown(named(id), model);
    }

    private static String shown(KeptList list, Model model) {
        SeenList seen = SeenList.of(list);
        model.addAttribute("list", seen);
        if (seen.isWorking()) {
            model.addAttribute("againInSeconds", AGAIN_IN_SECONDS);
        }
        return "lists/list";
    }

    /** Takes over what was looked at, or tries again what came to nothing, under an address of its own. */
    @PostMapping("/cloths/import/{id}/take")
    String take(@PathVariable String id, Model model, HttpServletResponse response) {
        KeptList list = named(id);
        if (!SeenList.of(list).isToBeTaken()) {
            return "redirect:" + address(list.job());
        }
        try {
            return "redirect:" + address(lists.goOn(list).orElseThrow(() -> new NotHere("list")));
        } catch (TooManyJobs full) {
            busy(response);
            model.addAttribute("full", true);
            return shown(list, model);
        }
    }

    @PostMapping("/cloths/import/{id}/cancel")
    String cancel(@PathVariable String id) {
        Job job = named(id).job();
        jobs.cancel(id);
        return "redirect:" + address(job);
    }

    @PostMapping("/cloths/import/{id}/forget")
    String forget(@PathVariable String id) {
        named(id);
        jobs.remove(id);
        return "redirect:/cloths/import";
    }

    private KeptList named(String id) {
        return lists.byId(id).orElseThrow(() -> new NotHere("list"));
    }

    private static String address(Job job) {
        return "/cloths/import/" + job.id();
    }

    private static void busy(HttpServletResponse response) {
        response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
        response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
    }
}
