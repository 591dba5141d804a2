package campcloth.rest;

import campcloth.advice.Adviser;
import campcloth.advice.Question;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.comfort.ComfortCautions;
import campcloth.comfort.Course;
import campcloth.comfort.CourseDrawing;
import campcloth.errand.Asked;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The course of an event in a garment of one cloth, in figures and as a picture. */
@RestController
@Tag(name = "Advice", description = "Which cloth? Ranked with reasons, melt warnings and rules")
class CourseController {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml;charset=UTF-8");

    private final Adviser adviser;
    private final Questions questions;
    private final Cloths cloths;
    private final Fibres fibres;

    CourseController(Adviser adviser, Questions questions, Cloths cloths, Fibres fibres) {
        this.adviser = adviser;
        this.questions = questions;
        this.cloths = cloths;
        this.fibres = fibres;
    }

    private record Followed(Asked asked, Cloth cloth, Course course) {}

    @PostMapping("/api/advice/course")
    @Operation(
            operationId = "followCourse",
            summary = "Follows one cloth through all spells of an event in their order",
            description =
                    "Body temperatures and the sweat in the clothing go on from spell to spell: wet from the march,"
                            + " cold by the fire.")
    CourseAnswer course(@Valid @RequestBody CourseRequest request) {
        Followed followed = followed(request);
        Question question = followed.asked.question();
        List<String> presumed = new ArrayList<>(followed.asked.presumed(adviser.rank(question)));
        presumed.addAll(Course.LEFT_OUT);
        return CourseAnswer.of(
                followed.cloth.name(),
                followed.course,
                presumed,
                ComfortCautions.of(question.event().spells(), question.event().place()));
    }

    @PostMapping("/api/advice/course.svg")
    @Operation(operationId = "drawCourse", summary = "The same as a picture, to be read in print")
    @ApiResponse(
            responseCode = "200",
            description = "A picture in SVG",
            content =
                    @Content(
                            mediaType = "image/svg+xml",
                            schema = @io.swagger.v3.oas.annotations.media.Schema(ref = "Picture")))
    ResponseEntity<String> picture(@Valid @RequestBody CourseRequest request) {
        Followed followed = followed(request);
        String event = followed.asked.question().event().name();
        return ResponseEntity.ok()
                .contentType(SVG)
                .body(CourseDrawing.svg(
                        followed.course, (event.isBlank() ? "The event" : event) + " in " + followed.cloth.name()));
    }

    private Followed followed(CourseRequest request) {
        Asked asked = questions
                .of(request.event(), request.eventId(), request.garment(), List::of)
                .asked();
        Cloth cloth = cloth(request);
        return new Followed(asked, cloth, adviser.course(asked.question(), cloth));
    }

    private Cloth cloth(CourseRequest request) {
        ClothBody told = request.cloth();
        String id = request.clothId();
        if ((told == null) == (id == null)) {
            throw Refused.of(
                    "cloth", told == null ? "is missing" : "stands beside clothId", "give either cloth or clothId");
        }
        if (told != null) {
            return Refused.within("cloth", () -> told.cloth(fibres));
        }
        String wanted = String.valueOf(id);
        return cloths.byId(wanted)
                .orElseThrow(() -> new Missing("cloth", wanted))
                .cloth();
    }
}
