using Calx.Papers.Charts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A drawing in its picture: the apparatus at one scale, and a label for each part. Units of the picture, y downwards; its
/// labels are as large whatever its width, which is that of its <see cref="DrawingSize"/>.</summary>
internal sealed class DrawingLayout
{
    private const double Edge = 8;
    private const double TextGap = 5;
    private const double LineHeight = 18;
    private const double LabelGap = 5;

    /// <summary>A single word may be wider: the longest that a file may have, in small letters.</summary>
    private const double WidestWord = 260;
    private const int MostLines = 4;
    private const double LargestScale = 1.6;
    private const double BenchBeyond = 10;

    public DrawingLayout(Drawing drawing, DrawingSize size)
    {
        IReadOnlyList<Placed> placed = Arrangement.Of(drawing);
        double widest = Math.Clamp(placed.Max(p => p.Part.Label.Split(' ').Max(word => TextWidth.Of(word))), size.WidestLabel, WidestWord);
        IReadOnlyList<string>[] lines = [.. placed.Select(p => TextWidth.Broken(p.Part.Label, widest, MostLines))];
        double column = lines.Max(l => l.Max(line => TextWidth.Of(line)));
        double pitch = (LineHeight * lines.Max(l => l.Count)) + LabelGap;
        double left = placed.Min(p => p.Shape.Left) - BenchBeyond;
        double right = placed.Max(p => p.Shape.Right) + BenchBeyond;
        double height = placed.Max(p => p.Shape.Height);
        double beside = Edge + column + TextGap + size.LeaderRoom;
        double room = Math.Clamp((right - left) + (2 * beside), size.Width, size.WidestWidth) - (2 * beside);
        Scale = Math.Clamp(Math.Min(room / (right - left), size.Tallest / height), size.SmallestScale, LargestScale);
        double drawn = (right - left) * Scale;
        // Room for all labels on one side: there they never cross, so the search always has somewhere to turn to.
        double labels = placed.Count * pitch;
        Width = Math.Max(size.Width, drawn + (2 * beside));
        // A label level with the lowest line or the highest still fits.
        double pad = Math.Max(Edge, (pitch / 2) + LabelGap);
        Height = Math.Max(height * Scale, labels) + (2 * pad);
        double first = (Width - drawn) / 2;
        Bench = (new Spot(first, Height - pad), new Spot(first + drawn, Height - pad));
        Parts = [.. placed.Select(p => p with { Shape = Shown(p.Shape, first - (left * Scale)) })];
        var frame = new LabelFrame(first - size.LeaderRoom, first + drawn + size.LeaderRoom, 0, Height);
        Texts = lines;
        Labels = new Labeller([.. Parts.Select((p, i) => Seen(p.Shape, (LineHeight * lines[i].Count) + LabelGap))], frame).Place();
    }

    /// <summary>Width of the picture.</summary>
    public double Width { get; }

    /// <summary>Height of the picture.</summary>
    public double Height { get; }

    /// <summary>What is empty at the top, above the highest line and label.</summary>
    public double Top
    {
        get
        {
            double lines = Parts.SelectMany(p => p.Shape.Strokes).SelectMany(s => s.Points).Min(p => p.Y);
            double texts = Labels.Min(l => Written(l).First().At.Y - TextWidth.LabelSize);
            return Math.Max(0, Math.Min(lines, texts) - Edge);
        }
    }

    /// <summary>Units of the picture for 1 mm of apparatus.</summary>
    public double Scale { get; }

    /// <summary>The line of the bench, which a mat covers.</summary>
    public (Spot From, Spot To) Bench { get; }

    /// <summary>The parts where they are in the picture.</summary>
    public IReadOnlyList<Placed> Parts { get; }

    /// <summary>The labels, one for each part, in their order.</summary>
    public IReadOnlyList<Label> Labels { get; }

    /// <summary>Their texts, line by line.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Texts { get; }

    /// <summary>Base lines of a label's text: where each line begins (right) or ends (left).</summary>
    public IEnumerable<(Spot At, string Text)> Written(Label label)
    {
        IReadOnlyList<string> lines = Texts[label.Target];
        double x = label.From.X + (label.Left ? -TextGap : TextGap);
        double first = label.From.Y + (TextWidth.LabelSize / 3) - (LineHeight * (lines.Count - 1) / 2);
        return lines.Select((line, i) => (new Spot(x, first + (i * LineHeight)), line));
    }

    private PartShape Shown(PartShape shape, double middle)
    {
        Spot Place(Spot p) => new(middle + (p.X * Scale), Bench.From.Y - (p.Y * Scale));
        return shape.Mapped(Place);
    }

    private static Target Seen(PartShape shape, double labelHeight) =>
        new(labelHeight, shape.LabelSpots, [.. shape.Strokes.Select(s => new SeenStroke(s))]);
}
