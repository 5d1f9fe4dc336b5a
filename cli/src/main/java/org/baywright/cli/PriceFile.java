package org.baywright.cli;

import java.io.IOException;
import java.util.Optional;
import org.baywright.model.takeoff.PriceList;
import picocli.CommandLine.Option;

/** The prices that an order is costed with, when there are any. */
final class PriceFile {
    @Option(
            names = "--prices",
            paramLabel = "FILE",
            description = {
                "Prices, CSV: item,unit,price and, if wanted, currency; items as the bill names them.",
                "Lines without a price are listed and not in the total."
            })
    private String file;

    /** The list as it was read, right or wrong. */
    Optional<PriceList> read() throws IOException {
        return file == null ? Optional.empty() : Optional.of(PriceList.read(TextFile.name(file), TextFile.read(file)));
    }
}
