package campcloth.fire;

import campcloth.event.RuleConditions;
import java.util.List;

/** Holds a worn cloth against one kind of condition. What is not known of the cloth counts against it. */
interface ClothCheck {

    /** What it comes to; empty where the condition is not asked. */
    List<Finding> findings(RuleConditions asked, WornCloth cloth);
}
