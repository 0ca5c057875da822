using Calx.Papers.Charts;

namespace Calx.Papers.Documents;

/// <summary>A part of a paper that stands on its own from margin to margin. A closed set: every form of output knows all of them.</summary>
public abstract class PaperBlock
{
    private PaperBlock()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="level">1 for a part of the paper, 2 for a part of that.</param>
    public sealed class Heading(Phrase text, int level = 1) : PaperBlock
    {
        /// <summary>Its text.</summary>
        public Phrase Text { get; } = text;

        /// <summary>1 or 2.</summary>
        public int Level { get; } = level is 1 or 2 ? level : throw new ArgumentOutOfRangeException(nameof(level), level, "Headings have two levels.");
    }

    /// <summary>A paragraph.</summary>
    public sealed class Paragraph(Phrase text, ParagraphLook look = ParagraphLook.Body) : PaperBlock
    {
        /// <summary>Its text.</summary>
        public Phrase Text { get; } = text;

        /// <summary>How it looks.</summary>
        public ParagraphLook Look { get; } = look;
    }

    /// <summary>A list.</summary>
    /// <param name="kind">What stands before its items.</param>
    /// <param name="texts">Its items.</param>
    /// <param name="columns">In how many columns they stand, from 1: short ones need not take a line each.</param>
    public sealed class Items(ListKind kind, IReadOnlyList<Phrase> texts, int columns = 1) : PaperBlock
    {
        /// <summary>In how many columns they stand.</summary>
        public int Columns { get; } = columns > 0 ? columns : throw new ArgumentOutOfRangeException(nameof(columns), columns, "At least one column is expected.");

        /// <summary>What stands before its items.</summary>
        public ListKind Kind { get; } = kind;

        /// <summary>Its items.</summary>
        public IReadOnlyList<Phrase> Texts { get; } = texts;
    }

    /// <summary>A table.</summary>
    public sealed class Table(PaperTable content) : PaperBlock
    {
        /// <summary>What is in it.</summary>
        public PaperTable Content { get; } = content;
    }

    /// <summary>A chart or a drawing.</summary>
    public sealed class Figure : PaperBlock
    {
        private readonly Lazy<byte[]> bitmap;

        internal Figure(SvgPicture picture, Phrase? caption, double widthInMillimetres)
        {
            (Picture, Caption, WidthInMillimetres) = (picture, caption, widthInMillimetres);
            bitmap = new Lazy<byte[]>(() => PngPicture.Of(picture, widthInMillimetres));
        }

        /// <summary>What stands under it, or null.</summary>
        public Phrase? Caption { get; }

        /// <summary>How wide it is printed, in mm.</summary>
        public double WidthInMillimetres { get; }

        internal SvgPicture Picture { get; }

        /// <summary>The picture as a bitmap of some width, drawn once for all papers that it stands on.</summary>
        internal byte[] Bitmap(double millimetres) => millimetres == WidthInMillimetres ? bitmap.Value : PngPicture.Of(Picture, millimetres);
    }

    /// <summary>An equation on a line of its own.</summary>
    public sealed class Equation(MathPart content) : PaperBlock
    {
        /// <summary>The equation.</summary>
        public MathPart Content { get; } = content;
    }

    /// <summary>Ruled lines to write on.</summary>
    public sealed class WritingLines(int count) : PaperBlock
    {
        /// <summary>How many.</summary>
        public int Count { get; } = count > 0 ? count : throw new ArgumentOutOfRangeException(nameof(count), count, "At least one line is expected.");
    }

    /// <summary>An empty frame to work or to draw in.</summary>
    public sealed class WorkingSpace(double heightInMillimetres) : PaperBlock
    {
        /// <summary>How high, in mm.</summary>
        public double HeightInMillimetres { get; } = heightInMillimetres;
    }

    /// <summary>Something that must not be overlooked, in a frame.</summary>
    public sealed class Panel(PanelKind kind, Phrase title, IReadOnlyList<PaperBlock> content) : PaperBlock
    {
        /// <summary>What kind of thing it is.</summary>
        public PanelKind Kind { get; } = kind;

        /// <summary>Its title.</summary>
        public Phrase Title { get; } = title;

        /// <summary>What is in it: paragraphs, lists and tables.</summary>
        public IReadOnlyList<PaperBlock> Content { get; } = content;
    }

    /// <summary>Parts side by side.</summary>
    public sealed class Beside(IReadOnlyList<PaperBlock> left, IReadOnlyList<PaperBlock> right, double leftShare) : PaperBlock
    {
        /// <summary>What stands on the left.</summary>
        public IReadOnlyList<PaperBlock> Left { get; } = left;

        /// <summary>What stands on the right.</summary>
        public IReadOnlyList<PaperBlock> Right { get; } = right;

        /// <summary>Share of the width that is the left's.</summary>
        public double LeftShare { get; } = leftShare is > 0 and < 1
            ? leftShare : throw new ArgumentOutOfRangeException(nameof(leftShare), leftShare, "A share between 0 and 1 is expected.");
    }

    /// <summary>Parts that are seen one after another: on a screen each is opened, on paper each is folded behind the sheet until the one
    /// above is done.</summary>
    public sealed class FoldOver(IReadOnlyList<IReadOnlyList<PaperBlock>> steps, Phrase fold, Phrase open) : PaperBlock
    {
        /// <summary>The steps, at least one; the first is seen at once.</summary>
        public IReadOnlyList<IReadOnlyList<PaperBlock>> Steps { get; } = steps is { Count: > 0 }
            ? steps : throw new ArgumentException("At least one step is expected.", nameof(steps));

        /// <summary>What stands at the line along which the paper is folded.</summary>
        public Phrase Fold { get; } = fold;

        /// <summary>What is pressed on a screen to see the next step.</summary>
        public Phrase Open { get; } = open;
    }

    /// <summary>Parts that are cut apart, a broken line below each. None is split between pages as long as it fits on one.</summary>
    public sealed class CutApart(IReadOnlyList<IReadOnlyList<PaperBlock>> parts) : PaperBlock
    {
        /// <summary>The parts, at least one.</summary>
        public IReadOnlyList<IReadOnlyList<PaperBlock>> Parts { get; } = parts is { Count: > 0 }
            ? parts : throw new ArgumentException("At least one part is expected.", nameof(parts));
    }

    /// <summary>What follows begins a new page.</summary>
    public sealed class PageBreak : PaperBlock;
}
