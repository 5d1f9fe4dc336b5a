/** What steel can be bought: sections, grades and anchors, each row with its source. */
package org.baywright.model.catalogue;
