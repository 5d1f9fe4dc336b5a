package org.baywright.render.sheet;

import java.util.List;

/** Standing cautions: what no drawing and no list of ours goes out without. */
final class Cautions {
    /** Common practice, no source. */
    private static final String WELDS =
            "Welds: 6 mm fillet all round at base, cap, knee, apex and lean-to plates; every size,"
                    + " as z6 at a symbol, is for the engineer to confirm.";

    /** On every sheet. */
    static final String BAND =
            "A licensed structural engineer must design and certify this building for its site. Local codes and consent"
                    + " documents prevail. Verify all sizes on site before cutting. Do not scale. Millimetres; levels"
                    + " from finished floor (FFL ±0). Grid lines A, B are the outside faces of columns; line 1 and the"
                    + " last line are the outside faces of the end frames.";

    /** On the cover. */
    static final List<String> COVER = List.of(
            "This set is a draft for discussion, council submission and pricing. It is not a design: sections, plates,"
                    + " anchors and welds are starting values until a licensed structural engineer has set them for the"
                    + " site.",
            "Design basis (wind region, terrain, importance, soil, openings counted as open): left blank for the engineer:"
                    + " ........................................................",
            "Local codes, consent conditions and the engineer's documents prevail over these sheets. Do not build or"
                    + " buy before consent.",
            "Eave height is measured from finished floor to the top of rafter steel, projected to the outside face of"
                    + " the column.",
            "Span and length are out to out of columns. Interior frames stand on their grid lines; end frames stand"
                    + " inside the end lines.",
            "Measure the slab and both diagonals before cutting steel. A member longer than stock is never spliced"
                    + " without the engineer's detail.",
            WELDS,
            "Lifting: know the mass, use rated gear, keep people from under the load, stop in wind. Brace and guy from"
                    + " the first frame; do not release a column before its anchors are cured and tight.",
            "Height: edge protection, safety mesh or lifting platform. Nobody walks on unfixed sheets, on translucent sheets"
                    + " or on gutters, and nobody works on the roof in wind or wet.",
            "Drilling concrete makes silica dust: use on-tool extraction and a respirator, never sweep dry. Locate"
                    + " reinforcement and buried services first.",
            "Welding: ventilate, keep a fire watch, strip zinc before welding. Never galvanise a sealed hollow"
                    + " section: vent and drain it.",
            "Keep clear of overhead lines. Electrical work and earthing by a licensed electrician.");

    /** On the cover of a building that is closed, after the others. */
    static final List<String> ENVELOPE = List.of(
            "Sheets: carry and fix from the lee side, tie down part-used packs every evening, no packs on purlins without"
                    + " their bridging. Wear gloves: edges cut.",
            "Bracing is tension only and needs its opposite: fit both, and keep temporary bracing and guys until roof and"
                    + " wall bracing are tight. Never take a brace out for a door.",
            "Sheet screws, washers, gutters and flashings of like metals; no lead, bare copper or treated timber against"
                    + " coated steel. Check existing roofs for asbestos before joining a lean-to.");

    /** Beside a section. */
    static final List<String> FRAME = List.of(
            "Sections, plates, anchors and welds are starting values, not a design: the engineer sets them for the site.",
            WELDS,
            "Heights are to the top and underside of rafter steel projected to the outside face of the column.",
            "Masses are of bare steel from the model, without welds, bolts, zinc or rigging. Lift by rated gear only;"
                    + " nobody under the load; stop in wind.",
            "Brace and guy each frame before it is let go; anchors cured and tight first.");

    /** Beside details of a lifting beam. */
    static final List<String> LIFTING_BEAM = List.of(
            "What beam, brackets, plates, welds, rafters and columns may carry, and how the beam is kept from tipping and"
                    + " swaying, is the engineer's to say. Mark the beam with that load before use.",
            "Brackets go onto column or rafter in the shop, plates onto brackets; the beam is welded on site. Every weld"
                    + " as the engineer sets.",
            "The hook's height is that of the hoist named in the definition: measure yours.",
            "Stops at both ends of the beam, so that no trolley runs off.",
            "Nobody stands under a load.");

    /** Beside details of eaves, ridge and cleats. */
    static final List<String> DETAILS = List.of(
            "Cleats, bolts and flashings are starting values, not a design: the engineer and the sheet maker's manual"
                    + " govern.",
            "Bolts of rows and braces: one a hole, snug, unless the engineer shows otherwise. Cleats shop welded.",
            "Slots of mullion cleats: the bolt in the middle, a plate washer over the slot, the nut snug and locked, so"
                    + " that the rafter moves without standing on the mullion. The engineer says how far it moves.",
            "Sheets are cut along their ribs: lower line the pan, upper line the crest. Sheets, flashings and gutters are"
                    + " drawn as if of no thickness.",
            "Turn up the pans at the ridge, close ribs with foam under ridge and apron, seal every flashing lap.",
            "Work at the roof edge only behind edge protection or from a lifting platform.");

    /** On the order. */
    static final String ORDER =
            "Quantities are taken from the model and are for the buyer to verify. Order only from certified drawings."
                    + " Ask for test certificates.";

    /** Under the order's tables. */
    static final List<String> ON_ORDERING = List.of(
            "Net is what the model holds. Allowance is saw cuts, end trims and off-cuts of bars, laps, spares and"
                    + " rounding up to what is sold. Order is both together.",
            "Bars come at mill length and are cut by the fabricator. Bars of other lengths in stock may cut with less"
                    + " waste: ask before changing.",
            "Plates are priced as cut and drilled; confirm hole sizes with the anchor product chosen.",
            "Finish before fabrication, and whether to galvanise or paint afterwards, is the buyer's choice. A hollow"
                    + " section to be galvanised needs vent and drain holes.",
            "Bundles are heavy: state the mass of each lift, unload with rated gear, keep people from under the load.");

    /** Under the order of a bare frame. */
    static final List<String> BARE_ORDER =
            List.of("Adhesive, bolts, welding consumables and coatings are not in this order.");

    /** Under the order of a whole building. */
    static final List<String> FULL_ORDER = List.of(
            "Sheets: measure the steel before the sheets are rolled; keep packs within the crane's limit, say which side"
                    + " is laid first; no packs on purlins without bridging.",
            "Screws, bolts, mesh and concrete strengths are starting values: the maker's wind tables and the engineer"
                    + " govern. Doors and windows need the engineer's wind rating.",
            "Read the safety data sheets of adhesive, paint and sealant before use; wear gloves and eye protection.");

    /** Beside a cutting plan. */
    static final List<String> CUTTING = List.of(
            "Cut only from certified drawings, and measure on site before cutting.",
            "Each bar is drawn from its left end with the trim cut off. Lengths are tip to tip; angles are saw settings"
                    + " from square. Slants are as long along the bar as they are; the depth of the bar is not to scale.",
            "Neighbours that lean alike share one cut. Rolled over: half a turn about the length. End for end: half a"
                    + " turn on the bench, the same face up. Both give the same piece, for the section is the same either"
                    + " way round.",
            "A bar ordered at a piece's own length is longer than the stock lengths: ask for it; a splice is the"
                    + " engineer's decision.",
            "Clamp the bar, support both ends, guard the blade, wear eye and hearing protection; cut faces are sharp and"
                    + " hot.");

    private Cautions() {}
}
