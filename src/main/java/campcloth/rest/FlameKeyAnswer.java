package campcloth.rest;

import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameClass;
import campcloth.fibre.FlameFeature;
import campcloth.fibre.FlameKey;
import campcloth.fibre.FlameSafety;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Arrays;
import java.util.List;

/** How threads are tested in a flame, and what can be answered. */
@Schema(name = "FlameKey")
record FlameKeyAnswer(
        @Schema(description = "what comes before any flame") List<String> safety,

        List<String> instructions,
        List<Question> questions,
        List<ClassBody> classes,
        List<String> cautions,

        @Schema(description = "ids of the sources, see /api/sources")
        List<String> sources) {

    /** A question and its answers. */
    @Schema(name = "FlameQuestion")
    record Question(
            String feature,
            String question,
            String look,

            @Schema(
                    description =
                            "exponent of its likelihoods, 1 or less where other answers tell the same thing again")
            double weight,

            List<Answer> answers) {

        static Question of(FlameFeature feature, FlameKey key) {
            return new Question(
                    feature.key(),
                    feature.question(),
                    feature.look(),
                    feature.weight(),
                    key.answers(feature).stream().map(Answer::of).toList());
        }
    }

    /** One of the answers of a question. */
    @Schema(name = "FlameAnswer")
    record Answer(
            String answer,
            String words,

            @Schema(description = "whether it shows that the thread melts, whatever else was seen")
            boolean showsMelting) {

        static Answer of(FlameAnswer answer) {
            return new Answer(answer.key(), answer.words(), answer.melting());
        }
    }

    /** A class of fibres that look alike in a flame. */
    @Schema(name = "FlameClass")
    record ClassBody(
            String fibreClass,
            String name,
            FibreFamily family,

            @Schema(description = "keys of the fibres, see /api/fibres")
            List<String> fibres,

            boolean melts) {

        static ClassBody of(FlameClass known) {
            return new ClassBody(known.key(), known.name(), known.family(), fibreKeys(known), known.melts());
        }
    }

    static List<String> fibreKeys(FlameClass known) {
        return known.fibres().stream().map(Fibre::key).toList();
    }

    static FlameKeyAnswer of(FlameKey key) {
        return new FlameKeyAnswer(
                FlameSafety.SAFETY,
                FlameSafety.INSTRUCTIONS,
                Arrays.stream(FlameFeature.values())
                        .map(feature -> Question.of(feature, key))
                        .toList(),
                key.classes().stream().map(ClassBody::of).toList(),
                FlameKey.CAUTIONS,
                FlameKey.SOURCES);
    }
}
