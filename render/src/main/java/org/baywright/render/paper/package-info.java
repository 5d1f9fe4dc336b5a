/** Sheet sizes, preferred scales, pens and lettering. */
package org.baywright.render.paper;
