/** Writers, one for each kind of file: PDF, SVG, CSV, JSON; and the folder that takes them all or none. */
package org.baywright.render.output;
