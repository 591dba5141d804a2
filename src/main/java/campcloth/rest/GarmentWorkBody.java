package campcloth.rest;

import campcloth.garment.Opening;
import campcloth.garment.SeamRoom;
import campcloth.garment.SewingTime;
import campcloth.garment.SewnBy;
import campcloth.plan.GarmentWork;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How one line of an order is sewn; figures are for one garment of it. */
@Schema(name = "GarmentWork")
record GarmentWorkBody(
        @Schema(description = "what its pieces are called by; empty where it is the only line")
        String garment,

        String design,
        int count,

        @Schema(description = "what to do, in the order in which it is done")
        List<String> steps,

        @Schema(description = "what is needed besides cloth and thread")
        List<String> notions,

        @Schema(description = "the opening that the body must pass; null where there is none") @Nullable
        OpeningBody opening,

        @Schema(description = "what each group of seams can still give or take at a try-on")
        List<SeamRoomBody> seamRooms,

        @Schema(description = "sewing thread for one, waste included")
        double threadM,

        TimeBody time) {

    /** An opening and what must pass it. */
    @Schema(name = "Opening")
    record OpeningBody(
            String name,
            double edgeCm,

            @Schema(description = "circumference of what must pass")
            double bodyCm,

            double easeCm,
            boolean passes,

            @Schema(
                    description =
                            "what the edge gains where half a centimetre is cut away all round; null at the end of"
                                    + " a tube, which does not widen so")
            @Nullable
            Double halfCmAllRoundGivesCm,

            String words) {

        static OpeningBody of(Opening opening) {
            return new OpeningBody(
                    opening.name(),
                    Rounded.to(opening.edgeCm(), 1),
                    Rounded.to(opening.bodyCm(), 1),
                    Rounded.to(opening.easeCm(), 1),
                    opening.passes(),
                    opening.halfCmGivesCm().map(cm -> Rounded.to(cm, 1)).orElse(null),
                    opening.words());
        }
    }

    /** What a group of seams can give or take. */
    @Schema(name = "SeamRoom")
    record SeamRoomBody(
            String seams,
            String measure,
            double letOutCm,

            @Schema(description = "null where the body's own measure was not given") @Nullable
            Double takeInCm) {

        static SeamRoomBody of(SeamRoom room) {
            return new SeamRoomBody(
                    room.seams(),
                    room.measure(),
                    Rounded.to(room.letOutCm(), 1),
                    room.takeInCm().isPresent() ? Rounded.to(room.takeInCm().getAsDouble(), 1) : null);
        }
    }

    /** About how long one garment takes, from practised to slow hands. */
    @Schema(name = "SewingTime")
    record TimeBody(SewnBy sewnBy, double leastHours, double mostHours, List<PartBody> parts, String basis) {

        static TimeBody of(SewingTime time) {
            return new TimeBody(
                    time.by(),
                    Rounded.to(time.leastHours(), 1),
                    Rounded.to(time.mostHours(), 1),
                    time.parts().stream().map(PartBody::of).toList(),
                    SewingTime.BASIS);
        }
    }

    /** A part of the work. */
    @Schema(name = "SewingPart")
    record PartBody(String work, double metres, double leastMinutes, double mostMinutes) {

        static PartBody of(SewingTime.Part part) {
            return new PartBody(
                    part.work(),
                    Rounded.to(part.metres(), 1),
                    Rounded.to(part.leastMinutes(), 0),
                    Rounded.to(part.mostMinutes(), 0));
        }
    }

    static GarmentWorkBody of(GarmentWork work) {
        return new GarmentWorkBody(
                work.garment(),
                work.design(),
                work.count(),
                work.steps(),
                work.notions(),
                work.fitting().opening().map(OpeningBody::of).orElse(null),
                work.fitting().rooms().stream().map(SeamRoomBody::of).toList(),
                Rounded.to(work.threadM(), 1),
                TimeBody.of(work.time()));
    }
}
