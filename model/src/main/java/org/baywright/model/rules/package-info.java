/**
 * Whole-model checks: what each value allows by itself but the building does not. One rule, one file. They say what
 * cannot stand together as geometry; they never judge strength.
 */
package org.baywright.model.rules;
