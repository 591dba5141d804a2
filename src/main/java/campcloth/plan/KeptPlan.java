package campcloth.plan;

/**
 * A plan that is kept.
 *
 * @param id how it is named in addresses
 * @param plan the plan
 */
public record KeptPlan(String id, CuttingPlan plan) {}
