package org.baywright.model;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import java.util.List;

/** Each package imports only those above it, so that data flows one way. */
@AnalyzeClasses(packages = "org.baywright.model", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    private static final List<String> DOWNWARD = List.of(
            "geometry",
            "problem",
            "catalogue",
            "definition",
            "setout",
            "parts",
            "cladding",
            "rules",
            "cutting",
            "nesting",
            "takeoff");

    @ArchTest
    static final ArchRule PACKAGES_LOOK_ONLY_UP = downward();

    @ArchTest
    static final ArchRule NO_CYCLES =
            slices().matching("org.baywright.model.(*)..").should().beFreeOfCycles();

    private static ArchRule downward() {
        Architectures.LayeredArchitecture layers =
                Architectures.layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String name : DOWNWARD) {
            layers = layers.layer(name).definedBy("org.baywright.model." + name + "..");
        }
        for (int i = 0; i < DOWNWARD.size(); i++) {
            String[] below = DOWNWARD.subList(i + 1, DOWNWARD.size()).toArray(String[]::new);
            layers = below.length == 0
                    ? layers.whereLayer(DOWNWARD.get(i)).mayNotBeAccessedByAnyLayer()
                    : layers.whereLayer(DOWNWARD.get(i)).mayOnlyBeAccessedByLayers(below);
        }
        return layers;
    }
}
