package org.baywright.model.definition;

import java.util.Optional;

/**
 * What the shed stands on.
 *
 * @param slab the concrete
 * @param site where it stands on its land, when that was given
 */
public record Ground(Slab slab, Optional<Site> site) {}
