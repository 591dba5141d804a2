/**
 * How cloth behaves at an open fire: the hazard of fast burning and the hazard of melting, graded apart and together for one
 * exposure; the rules of an event, a venue or the law, which can only tighten. Hazards 0 (least) to 100 (worst), shares percent
 * of mass, mass g/m2, distance m from the fire's centre, heat release kW, radiant flux kW/m2. May import {@code figure},
 * {@code fibre}, {@code cloth} and {@code event}. Nothing here is a flammability test or a finding of law.
 */
@NullMarked
package campcloth.fire;

import org.jspecify.annotations.NullMarked;
