package org.baywright.model.definition;

/** The members of one frame. */
public record Steel(Member column, Member rafter, Member leanToColumn, Member leanToRafter) {}
