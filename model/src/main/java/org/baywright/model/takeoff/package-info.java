/** What to buy, counted off the solids: bill of materials, masses, areas and the headline figures. */
package org.baywright.model.takeoff;
