package org.baywright.model.definition;

/** What the title block says of the job; a field not given is empty. */
public record Project(
        String name,
        String owner,
        String site,
        String legalDescription,
        String drawnBy,
        String date,
        String revision) {}
