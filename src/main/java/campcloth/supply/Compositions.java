package campcloth.supply;

import campcloth.fibre.Blend;
import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelReading;
import campcloth.figure.Refused;
import java.util.LinkedHashMap;
import java.util.Map;

/** Fibre contents of a list, read as labels are; what was read just before is remembered, for lists repeat themselves. */
final class Compositions {

    private static final int REMEMBERED = 500;

    private final LabelReader labels;
    private final Map<String, LabelReading> read = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, LabelReading> eldest) {
            return size() > REMEMBERED;
        }
    };

    Compositions(LabelReader labels) {
        this.labels = labels;
    }

    Blend blend(String text) {
        LabelReading reading = read.computeIfAbsent(text, labels::read);
        if (reading instanceof LabelReading.NotRead notRead) {
            String place = notRead.place().isEmpty() ? "" : " at '" + notRead.place() + "'";
            throw Refused.of("composition", notRead.because() + place, notRead.remedy());
        }
        LabelReading.Read whole = (LabelReading.Read) reading;
        if (whole.parts().size() > 1) {
            throw Refused.of(
                    "composition",
                    "names "
                            + whole.parts().stream()
                                    .map(LabelReading.Part::part)
                                    .toList(),
                    "give the fibres of the cloth alone");
        }
        return whole.parts().get(0).blend();
    }
}
