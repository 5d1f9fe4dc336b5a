package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.catalogue.Section;

/** Reads what bars are cut from. */
record SawReader(GroupReader file, MemberReader members) {
    Sawing read() {
        GroupReader saw = file.group("saw", SawKeys.SAW);
        return new Sawing(
                saw.number("kerf"),
                saw.number("trim"),
                saw.list("stock", "lengths, each {section, lengths, prices}").stream()
                        .map(entry -> lengths(GroupReader.of(entry, SawKeys.STOCK, file.values())))
                        .toList(),
                saw.list("yard", "bars, each {section, length, count}").stream()
                        .map(entry -> GroupReader.of(entry, SawKeys.YARD, file.values()))
                        .flatMap(entry -> yard(entry).stream())
                        .toList());
    }

    private Sawing.Lengths lengths(GroupReader entry) {
        List<Double> lengths = numbers(entry, "lengths");
        List<Double> prices = entry.given("prices").isPresent() ? numbers(entry, "prices") : List.of();
        if (entry.given("prices").isPresent() && prices.size() != lengths.size()) {
            String message = prices.size() + " prices were read for " + lengths.size() + " lengths";
            entry.findings()
                    .error("prices-and-lengths", entry.where("prices"), message, "give one price for each length");
            prices = List.of();
        }
        return new Sawing.Lengths(section(entry), lengths, prices);
    }

    private Optional<Section> section(GroupReader entry) {
        return entry.given("section").flatMap(members::known);
    }

    private Optional<Sawing.YardBars> yard(GroupReader entry) {
        Optional<Section> section = entry.value("section").flatMap(members::known);
        double length = entry.number("length");
        int count = entry.wholeIfGiven("count").orElse(1);
        return section.map(s -> new Sawing.YardBars(s, length, count));
    }

    /** A list of numbers, or one alone. */
    private static List<Double> numbers(GroupReader entry, String key) {
        Optional<Located> found = entry.value(key);
        Range range = entry.range(key);
        List<Located> items = found.map(f -> f instanceof Located.Sequence list ? list.items() : List.of(f))
                .orElse(List.of());
        if (found.isPresent() && items.isEmpty()) {
            entry.values().wrongType(found.get(), "a list of numbers");
        }
        return items.stream()
                .map(item -> entry.values().number(item, range))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }
}
