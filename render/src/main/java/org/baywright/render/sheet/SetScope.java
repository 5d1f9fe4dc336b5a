package org.baywright.render.sheet;

/** Which sheets go out together. */
public enum SetScope {
    /** What a council asks for: cover, site, plan, elevations, sections, set-out, framing, details, schedules. */
    COUNCIL,
    /** Those and all that the merchant and the workshop need besides. */
    ALL
}
