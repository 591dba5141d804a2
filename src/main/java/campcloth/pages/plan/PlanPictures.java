package campcloth.pages.plan;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.comfort.CourseDrawing;
import campcloth.fire.FirePlan;
import campcloth.fire.StandBackDrawing;
import campcloth.garment.Designs;
import campcloth.garment.Measurement;
import campcloth.garment.MeasuringDrawing;
import campcloth.pages.NotHere;
import java.time.Duration;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The pictures of these pages, each drawn when it is asked for. */
@Controller
class PlanPictures {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml;charset=UTF-8");
    private static final Duration KEPT = Duration.ofDays(1);

    private final Planned planned;
    private final Adviser adviser;
    private final AtFire atFire;

    PlanPictures(Planned planned, Adviser adviser, AtFire atFire) {
        this.planned = planned;
        this.adviser = adviser;
        this.atFire = atFire;
    }

    /** How to take a measurement; the same until the program changes. */
    @GetMapping("/plan/pictures/measure/{design}/{key}.svg")
    ResponseEntity<String> measure(@PathVariable String design, @PathVariable String key) {
        Measurement measurement = Designs.all().stream()
                .filter(known -> known.key().equals(design))
                .flatMap(known -> known.measurements().stream())
                .filter(known -> known.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotHere("picture"));
        return ResponseEntity.ok()
                .contentType(SVG)
                .cacheControl(CacheControl.maxAge(KEPT).cachePublic())
                .body(MeasuringDrawing.svg(measurement));
    }

    /** The course of the event in one cloth. */
    @GetMapping("/plan/pictures/course.svg")
    ResponseEntity<String> course(@ModelAttribute("form") AskedForm form, @RequestParam String cloth) {
        Candidate candidate = planned.cloth(cloth);
        Planned.Question about = planned.question(form, List::of);
        return drawn(CourseDrawing.svg(
                adviser.course(about.asked().question(), candidate.cloth()),
                candidate.cloth().name()));
    }

    /** The distances around one of the event's fires, for one cloth. */
    @GetMapping("/plan/pictures/fire.svg")
    ResponseEntity<String> fire(
            @ModelAttribute("form") AskedForm form, @RequestParam String cloth, @RequestParam int fire) {
        Candidate candidate = planned.cloth(cloth);
        Planned.Question about = planned.question(form, List::of);
        List<FirePlan> plans = FirePlan.all(
                atFire.of(about.asked().question(), candidate.cloth()),
                about.event().event().rules());
        if (fire < 0 || fire >= plans.size()) {
            throw new NotHere("picture");
        }
        return drawn(StandBackDrawing.svg(plans.get(fire)));
    }

    private static ResponseEntity<String> drawn(String svg) {
        return ResponseEntity.ok().contentType(SVG).body(svg);
    }
}
