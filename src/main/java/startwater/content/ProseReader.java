package startwater.content;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

/** Walks over the Markdown of a lesson and makes its blocks. Keeps the line of each. */
final class ProseReader extends AbstractVisitor {
    private static final String COMPUTED = "=";
    private static final int TOP_HEADING = 2;
    private static final int LAST_HEADING = 3;

    private final LessonFront front;
    private final LessonRules rules;
    private final Faults faults;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    private List<Inline> words = new ArrayList<>();
    private Inline.Style style = Inline.Style.PLAIN;

    /** @param faults of the part below the front block */
    ProseReader(LessonFront front, LessonRules rules, Faults faults) {
        this.front = front;
        this.rules = rules;
        this.faults = faults;
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }

    /** The line of each block, within the part below the front block. */
    List<Integer> lines() {
        return List.copyOf(lines);
    }

    @Override
    public void visit(Heading heading) {
        if (heading.getLevel() < TOP_HEADING || heading.getLevel() > LAST_HEADING) {
            faults.add(line(heading), Complaint.STRAY_HEADING);
        }
        add(new Block.Heading(heading.getLevel(), inlines(heading)), line(heading));
    }

    @Override
    public void visit(Paragraph paragraph) {
        List<Inline> inlines = inlines(paragraph);
        easy(inlines, line(paragraph));
        add(new Block.Paragraph(inlines), line(paragraph));
    }

    @Override
    public void visit(BulletList list) {
        items(list, false);
    }

    @Override
    public void visit(OrderedList list) {
        items(list, true);
    }

    private void items(ListBlock list, boolean numbered) {
        List<List<Inline>> items = new ArrayList<>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Node only = item.getFirstChild();
            if (only == null || only.getNext() != null || !(only instanceof Paragraph)) {
                faults.add(line(item), Complaint.NOT_PLAIN_PROSE);
                continue;
            }
            List<Inline> inlines = inlines(only);
            easy(inlines, line(item));
            items.add(inlines);
        }
        add(new Block.Items(numbered, items), line(list));
    }

    @Override
    public void visit(FencedCodeBlock fence) {
        int line = line(fence);
        if (fence.getClosingFenceLength() == null) {
            faults.add(line, Complaint.OPEN_BLOCK);
            return;
        }
        String body = front.filled(fence.getLiteral(), line, faults);
        LiveBlock.read(fence.getInfo(), body, line, rules, faults).ifPresent(block -> add(block, line));
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        faults.add(line(code), Complaint.PLAIN_CODE);
    }

    @Override
    public void visit(BlockQuote quote) {
        faults.add(line(quote), Complaint.PLAIN_CODE);
    }

    @Override
    public void visit(HtmlBlock html) {
        faults.add(line(html), Complaint.RAW_HTML);
    }

    @Override
    public void visit(HtmlInline html) {
        faults.add(line(html), Complaint.RAW_HTML);
    }

    @Override
    public void visit(Link link) {
        faults.add(line(link), Complaint.PICTURE_OR_LINK);
    }

    @Override
    public void visit(Image image) {
        faults.add(line(image), Complaint.PICTURE_OR_LINK);
    }

    @Override
    public void visit(LinkReferenceDefinition definition) {
        faults.add(line(definition), Complaint.PICTURE_OR_LINK);
    }

    @Override
    public void visit(ThematicBreak rule) {
        faults.add(line(rule), Complaint.NOT_PLAIN_PROSE);
    }

    @Override
    public void visit(HardLineBreak lineBreak) {
        faults.add(line(lineBreak), Complaint.NOT_PLAIN_PROSE);
    }

    @Override
    public void visit(SoftLineBreak lineBreak) {
        words.add(new Inline.Words(" ", style));
    }

    @Override
    public void visit(Text text) {
        words.add(new Inline.Words(text.getLiteral(), style));
    }

    @Override
    public void visit(Code code) {
        String literal = code.getLiteral().strip();
        if (literal.startsWith(COMPUTED)) {
            words.add(front.named(literal.substring(1).strip(), line(code), faults));
        } else {
            words.add(new Inline.Words(literal, Inline.Style.CODE));
        }
    }

    @Override
    public void visit(Emphasis emphasis) {
        styled(emphasis, style == Inline.Style.STRONG ? style : Inline.Style.EMPHASIS);
    }

    @Override
    public void visit(StrongEmphasis strong) {
        styled(strong, Inline.Style.STRONG);
    }

    private void styled(Node node, Inline.Style inner) {
        Inline.Style outer = style;
        style = inner;
        visitChildren(node);
        style = outer;
    }

    private List<Inline> inlines(Node node) {
        words = new ArrayList<>();
        visitChildren(node);
        return List.copyOf(words);
    }

    private void easy(List<Inline> inlines, int line) {
        StringBuilder text = new StringBuilder();
        inlines.forEach(inline -> text.append(inline.match(PlainText.AS_READ)));
        rules.in(faults);
        rules.prose(text.toString(), line);
    }

    private void add(Block block, int line) {
        blocks.add(block);
        lines.add(line);
    }

    /** The line on which a node starts; that of its parent where it has none. */
    private static int line(Node node) {
        Node at = node;
        while (at.getSourceSpans().isEmpty() && at.getParent() != null) {
            at = at.getParent();
        }
        return at.getSourceSpans().isEmpty() ? 1 : at.getSourceSpans().get(0).getLineIndex() + 1;
    }
}
