package campcloth.rest;

import campcloth.fibre.FlameKey;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Which fibre single threads of cloth without a label are likely of. */
@RestController
@Tag(name = "Burn tests", description = "Which fibre a thread is likely of, by what it does in a flame")
class FlameKeyController {

    private final FlameKey key;

    FlameKeyController(FlameKey key) {
        this.key = key;
    }

    @GetMapping("/api/burn-tests")
    @Operation(
            operationId = "readFlameKey",
            summary = "How to hold single threads to a flame, what to look for, and the classes that are told apart")
    FlameKeyAnswer key() {
        return FlameKeyAnswer.of(key);
    }

    @PostMapping("/api/burn-tests")
    @Operation(
            operationId = "rankFibres",
            summary = "Ranks the classes of fibre by what was seen of single threads in a flame",
            description =
                    "The ranking never tells shares, and nothing shows that a cloth does not melt. Nothing is kept.")
    FlameFindingAnswer find(@Valid @RequestBody FlameRequest request) {
        return FlameFindingAnswer.of(key.finding(request.seen()));
    }
}
