package org.baywright.model.setout;

import org.baywright.model.geometry.Vec2;

/**
 * How a sliding door moves along its wall: one leaf where it has room to slide aside, to the right first, or else two
 * that part in the middle.
 *
 * @param place the opening
 */
public record SlidingLeaf(OpeningPlace place) {
    /** A leaf laps the wall so far on either side and over the head. */
    public static final double LAP = 100;

    /** Left edge when closed, in the wall's u. */
    public double left() {
        return place.left() - LAP;
    }

    /** Right edge when closed. */
    public double right() {
        return place.right() + LAP;
    }

    private double width() {
        return right() - left();
    }

    private double wallFrom() {
        return place.face().outline().stream().mapToDouble(Vec2::x).min().orElseThrow();
    }

    private double wallTo() {
        return place.face().outline().stream().mapToDouble(Vec2::x).max().orElseThrow();
    }

    private boolean slidesRight() {
        return wallTo() - right() >= width();
    }

    private boolean slidesLeft() {
        return !slidesRight() && left() - wallFrom() >= width();
    }

    /** Whether it is two leaves. */
    public boolean parts() {
        return !slidesRight() && !slidesLeft();
    }

    /** How much of its way the wall is too short for, when its leaf has to part and a half stands past a corner open. */
    public double lacking() {
        double left = Math.max(0, wallFrom() - (left() - width() / 2));
        double right = Math.max(0, right() + width() / 2 - wallTo());
        return parts() ? Math.max(left, right) : 0;
    }

    /** Where its track starts: nothing may stand in its way from here on. */
    public double trackFrom() {
        return slidesRight() ? left() : slidesLeft() ? left() - width() : Math.max(wallFrom(), left() - width() / 2);
    }

    /** Where its track ends. */
    public double trackTo() {
        return slidesRight() ? right() + width() : slidesLeft() ? right() : Math.min(wallTo(), right() + width() / 2);
    }
}
