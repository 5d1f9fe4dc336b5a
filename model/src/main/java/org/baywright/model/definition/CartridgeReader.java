package org.baywright.model.definition;

import java.util.List;

/** Reads the adhesive as it is bought, and the times of its label. */
record CartridgeReader(GroupReader group) {
    Cartridge read() {
        double volume = group.number("cartridge");
        double priming = group.number("priming");
        if (priming >= volume) {
            String message = "a nozzle takes " + NumberText.plain(priming) + " mL; the cartridge holds "
                    + NumberText.plain(volume);
            group.findings().error("priming", group.where("priming"), message, "lessen priming");
        }
        List<CureTime> cure = group.list("cure", "times, each {concrete, workable, dry, wet}").stream()
                .map(entry -> time(GroupReader.of(entry, Keys.CURE, group.values())))
                .toList();
        double held = Math.min(priming, volume / 2);
        return cure.isEmpty() ? Cartridge.example(volume, held) : new Cartridge(volume, held, cure, false);
    }

    private static CureTime time(GroupReader entry) {
        return new CureTime(
                entry.number("concrete"), entry.number("workable"), entry.number("dry"), entry.number("wet"));
    }
}
