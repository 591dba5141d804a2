package campcloth.pages.lists;

import campcloth.figure.Refused;
import campcloth.pages.Choice;
import campcloth.pages.FormErrors;
import campcloth.supply.ListDesk;
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

/** A supplier's list: sent once, looked at, taken over when its sender says so, told as it goes. */
@Controller
class ImportPage {

    private static final String FORM = "lists/import";
    private static final String RETRY_SECONDS = "15";

    /** How soon a page without scripts asks again how far a list has come. */
    private static final int AGAIN_IN_SECONDS = 2;

    private final UploadedLists lists;
    private final MessageSource texts;

    ImportPage(UploadedLists lists, MessageSource texts) {
        this.lists = lists;
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
            return "redirect:/cloths/import/"
                    + kept(file.get(), order.get(), form.onBadRow).id();
        } catch (UploadedLists.Full full) {
            errors.reject("lists.full");
            busy(response);
            return FORM;
        }
    }

    private UploadedList kept(MultipartFile file, ListOrder order, OnBadRow onBadRow)
            throws IOException, UploadedLists.Full {
        Spool spool = new Spool();
        try (InputStream bytes = file.getInputStream()) {
            if (!spool.take(bytes, ListDesk.MOST_BYTES)) {
                throw Refused.of("file", "is over 16 MiB", "send the list in parts");
            }
        } catch (IOException | RuntimeException broken) {
            spool.close();
            throw broken;
        }
        String name = file.getOriginalFilename();
        return lists.add(name == null ? "" : name, order, onBadRow, spool);
    }

    @GetMapping("/cloths/import/{id}")
    String look(@PathVariable String id, Model model) {
        SeenList list = SeenList.of(lists.named(id));
        model.addAttribute("list", list);
        if (list.isWorking()) {
            model.addAttribute("againInSeconds", AGAIN_IN_SECONDS);
        }
        return "lists/list";
    }

    @PostMapping("/cloths/import/{id}/take")
    String take(@PathVariable String id, Model model, HttpServletResponse response) {
        UploadedList list = lists.named(id);
        try {
            lists.take(list);
            return "redirect:/cloths/import/" + id;
        } catch (UploadedLists.Full full) {
            busy(response);
            model.addAttribute("list", SeenList.of(list));
            model.addAttribute("full", true);
            return "lists/list";
        }
    }

    @PostMapping("/cloths/import/{id}/forget")
    String forget(@PathVariable String id) {
        lists.forget(lists.named(id));
        return "redirect:/cloths/import";
    }

    private static void busy(HttpServletResponse response) {
        response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
        response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
    }
}
