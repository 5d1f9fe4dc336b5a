package org.baywright.model.definition;

/**
 * How long an adhesive can be worked and how long it takes to cure at one temperature of the concrete.
 *
 * @param concreteC of the concrete, not of the air
 * @param workableMin from the nozzle until the rod may no longer be moved, minutes
 * @param dryH until it may be tightened, hours, in a dry hole
 * @param wetH the same in a wet hole
 */
public record CureTime(double concreteC, double workableMin, double dryH, double wetH) {}
