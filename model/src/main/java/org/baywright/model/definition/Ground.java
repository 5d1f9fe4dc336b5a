package org.baywright.model.definition;

import java.util.Optional;

/**
 * What the shed stands on.
 *
 * @param slab the concrete
 * @param site where it stands on its land, when that was given
 */
public record Ground(Slab slab, Optional<Site> site) {
    /** The usual slab. Common practice, no source: 125 mm for tractors, 600 x 600 x 300 under every base. */
    static Ground usual() {
        return new Ground(new Slab(125, 150, 600, 300), Optional.empty());
    }
}
