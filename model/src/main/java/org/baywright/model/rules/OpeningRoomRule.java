package org.baywright.model.rules;

import org.baywright.model.definition.Opening;
import org.baywright.model.setout.OpeningPlace;

/**
 * An opening with its jambs fits between the columns of its bay, and with its header under the rafter. A roller door
 * also wants room for its guides and its roll, which differs by maker.
 */
final class OpeningRoomRule implements Rule {
    /** Beside a roller door, for its guides. Common practice, no source. */
    private static final double ROLLER_SIDE = 150;

    /** Above a roller door, for its roll. Common practice, no source. */
    static final double ROLLER_HEAD = 450;

    @Override
    public void check(Asked asked) {
        asked.openings().stream().filter(p -> !p.isWholeBay()).forEach(place -> {
            OpeningRoom room = new OpeningRoom(asked, place);
            width(asked, place, room);
            height(asked, place, room);
        });
    }

    private static void width(Asked asked, OpeningPlace place, OpeningRoom room) {
        double clear = room.to() - room.from();
        double most = clear - 2 * room.jamb();
        String label = place.opening().type().label();
        if (place.width() > most) {
            asked.error(
                    "opening-too-wide",
                    Asked.key(place) + ".width",
                    "the " + label + " is " + Asked.mm(place.width()) + " wide; between the columns there are "
                            + Asked.mm(clear) + ", less " + Asked.mm(room.jamb()) + " for a jamb on either side",
                    "make it at most " + Asked.mm(Math.floor(most)) + " wide");
            return;
        }
        double left = place.left() - room.from();
        double right = room.to() - place.right();
        if (Math.min(left, right) < room.jamb()) {
            asked.error(
                    "opening-off-bay",
                    Asked.key(place) + ".offset",
                    "the " + label + " leaves " + Asked.mm(Math.min(left, right))
                            + " mm to the column's face; its jamb takes " + Asked.mm(room.jamb()),
                    "change offset, or leave it out for the middle");
        } else if (rolls(place) && Math.min(left, right) < ROLLER_SIDE) {
            asked.advice(
                    "roller-door-side",
                    Asked.key(place),
                    "there are " + Asked.mm(Math.min(left, right))
                            + " mm beside the roller door; guides usually take " + Asked.mm(ROLLER_SIDE)
                            + " (common practice)",
                    "ask the door's maker, or narrow or move the door");
        }
    }

    private static void height(Asked asked, OpeningPlace place, OpeningRoom room) {
        double under = room.underRafter();
        double free = asked.openings().stream()
                .filter(o -> o.isOver(place))
                .mapToDouble(OpeningPlace::sill)
                .reduce(under, Math::min);
        double most = under - room.jamb() - place.sill();
        double height = place.head() - place.sill();
        String label = place.opening().type().label();
        if (height > most) {
            asked.error(
                    "opening-too-high",
                    Asked.key(place) + ".height",
                    "the " + label + " reaches " + Asked.mm(place.head()) + " above the floor; the rafter is "
                            + Asked.mm(under) + " above it there, and the header takes " + Asked.mm(room.jamb()),
                    most > 0
                            ? "make it at most " + Asked.mm(Math.floor(most)) + " high"
                                    + (place.sill() > 0 ? ", lower its sill" : "") + ", or raise the eave"
                            : "lower its sill, or raise the eave");
        } else if (rolls(place) && place.head() + ROLLER_HEAD > free) {
            asked.advice(
                    "roller-door-head",
                    Asked.key(place),
                    "there are " + Asked.mm(free - place.head()) + " mm from the roller door's head to the "
                            + (free < under ? "opening over it" : "rafter") + "; a roll usually takes "
                            + Asked.mm(ROLLER_HEAD) + " (common practice)",
                    "ask the door's maker, or lower the door");
        }
    }

    /** Whether it has a roll over it. */
    static boolean rolls(OpeningPlace place) {
        return place.opening().type() == Opening.Type.ROLLER_DOOR;
    }
}
