package campcloth.rest;

import campcloth.fire.Better;
import campcloth.fire.Change;
import campcloth.fire.FireGrade;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.WhatIf;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What would better the verdict that fire and rules give; never a change of a rule. */
@Schema(name = "WhatIf")
record WhatIfBody(
        @Schema(description = "one change, or two together; empty where nothing that can be computed betters it")
        List<ChangeBody> change,

        String text,

        @Schema(description = "what fire and rules would say then; other criteria are not looked at")
        Gate wouldBe,

        @Schema(description = "grade at the worst fire then; null where there is no fire") @Nullable
        FireGrade grade) {

    /** One thing to do otherwise. */
    @Schema(name = "Change")
    record ChangeBody(
            Change.Kind kind,

            @Schema(description = "what it is changed to, in short", example = "3.1 m")
            String to) {}

    /** Empty where there is nothing to better; one entry without a change where nothing betters it. */
    static List<WhatIfBody> of(WhatIf.Answer answer) {
        return answer.nothingHelps()
                ? List.of(new WhatIfBody(
                        List.of(),
                        answer.nothing(),
                        answer.now().gate(),
                        Better.gradeOf(answer.now()).orElse(null)))
                : answer.better().stream().map(WhatIfBody::of).toList();
    }

    private static WhatIfBody of(Better better) {
        return new WhatIfBody(
                better.changes().stream()
                        .map(change -> new ChangeBody(change.kind(), change.to()))
                        .toList(),
                better.text(),
                better.wouldBe(),
                better.grade().orElse(null));
    }
}
