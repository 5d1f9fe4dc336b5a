package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.definition.Project;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Paper;

/** Puts frame and title block round drafts, counting pages. */
final class Framing {
    private Framing() {}

    static List<Sheet> framed(Project project, List<Draft> drafts) {
        return IntStream.range(0, drafts.size())
                .mapToObj(i -> framed(project, drafts.get(i), i + 1, drafts.size()))
                .toList();
    }

    private static Sheet framed(Project project, Draft draft, int page, int pages) {
        List<Mark> marks = new ArrayList<>(SheetFrame.marks());
        marks.addAll(TitleBlock.marks(project, draft, page, pages));
        marks.addAll(draft.marks());
        return new Sheet(Paper.A3, draft.number(), draft.title(), marks);
    }
}
