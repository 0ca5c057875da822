using Calx.Papers.Charts;
using Calx.Papers.Drawings;
using Calx.Practicals.Definition;
using Calx.Tests;
using CsCheck;

namespace Calx.Papers.Tests.Drawings;

/// <summary>Labels and their ruled lines, in the picture's units.</summary>
public class LabelPlaceTests
{
    [Fact]
    public void In_any_drawing_lines_never_cross_and_labels_cover_nothing() =>
        RandomDrawings.All.Always(AssertReadable, iter: 80);

    [Fact]
    public void In_every_shipped_drawing_lines_never_cross_and_labels_cover_nothing() =>
        Assert.All(BuiltInPracticals.All.SelectMany(p => p.Drawings), AssertReadable);

    [Fact]
    public void In_every_shipped_drawing_lines_are_well_apart_and_nearly_level()
    {
        foreach (Drawing drawing in BuiltInPracticals.All.SelectMany(p => p.Drawings))
        {
            var layout = new DrawingLayout(drawing, DrawingSize.Wide);
            IReadOnlyList<Label> labels = layout.Labels;
            for (int i = 0; i < labels.Count; i++)
            {
                // The end is on its own part and on no other: nobody has to guess which of two lines is meant.
                SeenStroke[] others = [.. layout.Parts.Where((_, k) => k != i).SelectMany(p => p.Shape.Strokes).Select(s => new SeenStroke(s))];
                Assert.False(others.Any(stroke => stroke.IsNear(labels[i].End, 2)), $"{i} in {drawing.Label} ends beside another part");
                Assert.True(Math.Abs(labels[i].From.Y - labels[i].End.Y) <= 0.5 * Math.Abs(labels[i].From.X - labels[i].End.X), $"{i} in {drawing.Id}");
                for (int j = i + 1; j < labels.Count; j++)
                {
                    Assert.True(Plane.Apart(labels[i].Leader, labels[j].Leader) >= Labeller.Clear, $"{i} and {j} in {drawing.Id}");
                }
            }
        }
    }

    [Fact]
    public void Lines_to_any_spots_from_one_side_do_not_cross()
    {
        Gen.Select(Gen.Double[100, 400], Gen.Double[0, 300], Gen.Bool.Select(two => two ? 41.0 : 23.0)).Array[1, 14]
            .Where(spots => spots.All(a => spots.Count(b => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1) == 1)).Always(
            spots =>
            {
                var frame = new LabelFrame(80, 420, 0, 600);
                Label[] labels = LabelColumns.Stand([.. spots.Select(s => (true, new Spot(s.Item1, s.Item2), s.Item3))], frame);
                Assert.Equal(labels.Length, labels.Select(l => l.From).Distinct().Count());
                for (int i = 0; i < labels.Length; i++)
                {
                    Assert.DoesNotContain(labels.Skip(i + 1), other => Plane.Meet(other.Leader, labels[i].Leader));
                }
            },
            iter: 500);
    }

    private static void AssertReadable(Drawing drawing)
    {
        var layout = new DrawingLayout(drawing, DrawingSize.Wide);
        Assert.Equal(Enumerable.Range(0, layout.Parts.Count), layout.Labels.Select(l => l.Target));
        (double Left, double Top, double Right, double Bottom)[] boxes = [.. layout.Labels.Select(l => Box(layout, l))];
        for (int i = 0; i < boxes.Length; i++)
        {
            Label label = layout.Labels[i];
            Assert.True(boxes[i].Left >= 0 && boxes[i].Top >= 0 && boxes[i].Right <= layout.Width && boxes[i].Bottom <= layout.Height, $"{i} leaves the picture");
            Assert.True(IsOn(layout.Parts[i].Shape, label.End), $"the line of {layout.Parts[i].Part.Kind} ends beside it");
            Assert.True(label.Left ? boxes[i].Right < layout.Parts.Min(p => p.Shape.Left) : boxes[i].Left > layout.Parts.Max(p => p.Shape.Right), $"{i} covers the drawing");
            for (int j = i + 1; j < boxes.Length; j++)
            {
                Assert.False(Plane.Meet(label.Leader, layout.Labels[j].Leader), $"{i} and {j} cross");
                Assert.False(Cover(boxes[i], boxes[j]), $"{i} and {j} cover each other");
            }
        }

        Assert.All(layout.Parts.SelectMany(p => p.Shape.Strokes).SelectMany(s => s.Points), p =>
            Assert.True(p.X >= 0 && p.X <= layout.Width && p.Y >= 0 && p.Y <= layout.Height));
    }

    private static (double Left, double Top, double Right, double Bottom) Box(DrawingLayout layout, Label label)
    {
        (Spot At, string Text)[] lines = [.. layout.Written(label)];
        double width = lines.Max(l => TextWidth.Of(l.Text));
        double x = lines[0].At.X;
        // Ascenders of the font end 0.74 em above the base line, descenders 0.22 em below it.
        return (label.Left ? x - width : x, lines[0].At.Y - 11.1, label.Left ? x : x + width, lines[^1].At.Y + 3.3);
    }

    private static bool Cover((double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static bool IsOn(PartShape shape, Spot end) =>
        shape.Strokes.Any(s => s.Pieces.Any(piece => Plane.Distance(piece, end) < 0.75))
        || shape.Strokes.Any(s => s.Closed && Plane.Inside(s.Points, end))
        || (shape.Region is not null && Plane.Inside(shape.Region, end));
}
