package org.baywright.model.definition;

/** What goes on the frame. So far the bare frame only. */
public enum Envelope {
    NONE
}
