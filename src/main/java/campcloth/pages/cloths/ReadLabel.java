package campcloth.pages.cloths;

import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelReading;
import java.util.List;
import java.util.Optional;
import org.springframework.validation.BindingResult;

/**
 * A label on its way into the fibres of a form.
 *
 * @param notes what to know beside the shares
 * @param parts the parts, where the label names several and none was chosen
 * @param taken whether fibres were taken over
 */
public record ReadLabel(List<String> notes, List<LabelReading.Part> parts, boolean taken) {

    /**
     * Reads the label of a form; what cannot be read is told at its field.
     *
     * @param chosen place of the part that was chosen, where the label names several
     */
    static Optional<ReadLabel> into(
            ClothForm form, BindingResult binding, LabelReader reader, Optional<Integer> chosen, Wording words) {
        String text = form.label == null ? "" : form.label;
        LabelReading reading = form.language == null ? reader.read(text) : reader.read(text, form.language);
        if (reading instanceof LabelReading.NotRead notRead) {
            binding.rejectValue("label", "label", told(notRead, words));
            return Optional.empty();
        }
        LabelReading.Read read = (LabelReading.Read) reading;
        List<LabelReading.Part> parts = read.parts();
        Optional<LabelReading.Part> part = parts.size() == 1
                ? Optional.of(parts.get(0))
                : chosen.filter(place -> place >= 0 && place < parts.size()).map(parts::get);
        part.ifPresent(found -> form.take(found.blend()));
        return Optional.of(new ReadLabel(read.notes(), part.isPresent() ? List.of() : parts, part.isPresent()));
    }

    private static String told(LabelReading.NotRead notRead, Wording words) {
        String place = notRead.place().isEmpty() ? "" : " " + words.of("cloths.form.label.at", notRead.place());
        String readings = notRead.readings().isEmpty()
                ? ""
                : " " + words.of("cloths.form.label.mayMean", String.join("; ", notRead.readings()));
        return notRead.because() + place + "; " + notRead.remedy() + readings;
    }
}
