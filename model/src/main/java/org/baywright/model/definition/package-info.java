/**
 * What the user asked for, with every default applied. A {@link org.baywright.model.definition.Definition} that exists
 * is complete and within range; what its parts do to each other is checked by the rules.
 */
package org.baywright.model.definition;
