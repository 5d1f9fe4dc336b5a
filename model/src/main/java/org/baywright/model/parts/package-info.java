/**
 * Members, plates and anchors as solids. Every length, angle, mass and drawn line comes from these; parts that are the
 * same piece of work share a mark.
 */
package org.baywright.model.parts;
