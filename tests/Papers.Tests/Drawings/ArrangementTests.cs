using Calx.Papers.Drawings;
using Calx.Practicals.Definition;
using Calx.Tests;
using CsCheck;

namespace Calx.Papers.Tests.Drawings;

/// <summary>How apparatus stands, in mm: what carries touches, and nothing goes through anything.</summary>
public class ArrangementTests
{
    /// <summary>Rounding of curves drawn as short straight pieces, in mm: below a tenth of a line's width.</summary>
    private const double Slack = 0.1;

    private static readonly Apparatus[] Open = [Apparatus.Crucible, Apparatus.Basin, Apparatus.Beaker, Apparatus.Can, Apparatus.Flask, Apparatus.Tube, Apparatus.Filter];

    [Fact]
    public void Every_part_in_every_place_touches_its_support_and_goes_through_nothing()
    {
        Drawing[] all = [.. RandomDrawings.EveryPlace()];
        Assert.Equal(Enum.GetValues<Apparatus>().Order(), all.SelectMany(d => d.Parts).Select(p => p.Kind).Distinct().Order());
        Assert.All(all, AssertSound);
    }

    [Fact]
    public void Any_arrangement_stands_and_goes_through_nothing() => RandomDrawings.All.Always(AssertSound, iter: 150);

    [Fact]
    public void An_open_vessel_has_no_line_across_its_mouth()
    {
        foreach (Apparatus kind in Open)
        {
            DrawnPart vessel = RandomDrawings.One(kind);
            Drawing drawing = RandomDrawings.Of([kind is Apparatus.Tube or Apparatus.Filter ? RandomDrawings.One(Apparatus.Clamp, (DrawnPlace.Holds, vessel)) : vessel]);
            Placed placed = Arrangement.Of(drawing).Single(p => p.Part == vessel);
            Cavity cavity = placed.Shape.Cavity!;
            double middle = placed.Shape.LabelSpots.Average(p => p.X); // They are the same on both sides.
            double foot = placed.Shape.Strokes.Min(s => s.Points.Min(p => p.Y));
            double narrowest = Enumerable.Range(6, 5).Min(tenths => cavity.HalfAt(cavity.Level(tenths / 10.0)));
            foreach (double off in new[] { -0.8, -0.3, 0.3, 0.8 })
            {
                // From far above one gets down between the walls without meeting a line.
                var down = (new Spot(middle + (off * narrowest), 1000), new Spot(middle + (off * narrowest), foot + cavity.Level(0.6)));
                Assert.DoesNotContain(placed.Shape.Strokes.SelectMany(s => s.Pieces), piece => Plane.Meet(piece, down));
            }
        }
    }

    // Common practice, no source: what a class has on its bench. A tripod lets a burner stand below, a crucible hangs through its triangle.
    [Fact]
    public void A_burner_fits_under_its_tripod_and_its_flame_ends_below_the_crucible()
    {
        IReadOnlyList<Placed> parts = Arrangement.Of(BuiltInPracticals.Find("magnesium-oxide")!.Drawings.Single(d => d.Id == "heating"));
        Placed Of(Apparatus kind) => parts.Single(p => p.Part.Kind == kind);
        double crucible = Of(Apparatus.Crucible).Shape.Strokes.Min(s => s.Points.Min(p => p.Y));

        Assert.InRange(Of(Apparatus.Burner).Shape.Height, crucible - 12, crucible - 2);
        Assert.True(Of(Apparatus.Tripod).Shape.Left < Of(Apparatus.Burner).Shape.Left && Of(Apparatus.Burner).Shape.Right < Of(Apparatus.Tripod).Shape.Right);
        Assert.True(crucible < Of(Apparatus.Triangle).Shape.Strokes.Min(s => s.Points.Min(p => p.Y)));
    }

    [Fact]
    public void Contents_stay_inside_their_vessel_and_a_liquid_covers_a_solid()
    {
        RandomDrawings.All.Always(
            drawing =>
            {
                IReadOnlyList<Placed> parts = Arrangement.Of(drawing);
                foreach (Placed contents in parts.Where(p => ApparatusRules.IsContents(p.Part.Kind)))
                {
                    Placed vessel = parts.Single(p => p.Part == contents.Support);
                    Assert.True(contents.Shape.Left >= vessel.Shape.Left && contents.Shape.Right <= vessel.Shape.Right);
                    Assert.True(contents.Shape.Height < vessel.Shape.Height);
                    Assert.True(contents.Shape.Strokes.Min(s => s.Points.Min(p => p.Y)) >= vessel.Shape.Strokes.Min(s => s.Points.Min(p => p.Y)));
                }
            },
            iter: 100);
    }

    // Common practice, no source: copper is deposited on the strip that is joined to the negative side of the supply.
    [Fact]
    public void Leads_join_the_instruments_in_one_loop_and_the_cathode_to_the_negative_side()
    {
        IReadOnlyList<Placed> parts = Arrangement.Of(BuiltInPracticals.Find("copper-electrolysis")!.Drawings.Single(d => d.Id == "circuit"));
        Stroke[] leads = [.. parts.Single(p => p.Part.Kind == Apparatus.Leads).Shape.Strokes];
        IReadOnlyList<Spot> Terminals(string label) => parts.Single(p => p.Part.Label == label).Shape.Terminals!;
        Spot[] ends = [.. leads.SelectMany(l => new[] { l.Points[0], l.Points[^1] })];

        Assert.Equal(4, leads.Length);
        Assert.All(parts.SelectMany(p => p.Shape.Terminals ?? []), terminal => Assert.Single(ends, end => end.To(terminal) < Slack));
        Assert.Equal(ends.Length, parts.Sum(p => p.Shape.Terminals?.Count ?? 0));
        Stroke negative = Assert.Single(leads, l => l.Points[0].To(Terminals("low-voltage supply")[^1]) < Slack);
        Assert.True(negative.Points[^1].To(Terminals("cathode C")[0]) < Slack);
    }

    [Fact]
    public void The_hole_of_a_clamped_reduction_tube_lies_lower_than_its_mouth_and_its_gas_goes_in_at_the_mouth()
    {
        IReadOnlyList<Placed> parts = Arrangement.Of(BuiltInPracticals.Find("copper-oxide-reduction")!.Drawings.Single(d => d.Id == "heating"));
        PartShape Of(Apparatus kind) => parts.Single(p => p.Part.Kind == kind).Shape;

        Assert.True(Of(Apparatus.Jet).Right < Of(Apparatus.Powder).Left && Of(Apparatus.Powder).Right < Of(Apparatus.Gas).Left);
        Assert.True(Of(Apparatus.Jet).Foot + 4 < Of(Apparatus.Gas).Height);
        Assert.InRange(Of(Apparatus.Burner).Height, Of(Apparatus.ReductionTube).Foot - 12, Of(Apparatus.Powder).Foot - 2);
    }

    private static void AssertSound(Drawing drawing)
    {
        IReadOnlyList<Placed> parts = Arrangement.Of(drawing);
        Assert.Equal(drawing.Parts.Count(), parts.Count);
        foreach (Placed part in parts)
        {
            Assert.True(Gap(part, parts) <= Slack, $"{part.Part.Kind} is {Gap(part, parts)} mm off what carries it");
            Assert.True(part.Shape.Strokes.All(s => s.Points.All(p => p.Y >= -Slack)), $"{part.Part.Kind} below the bench");
        }

        for (int i = 0; i < parts.Count; i++)
        {
            for (int j = 0; j < parts.Count; j++)
            {
                if (i != j)
                {
                    Assert.False(GoesInto(parts[i].Shape, parts[j].Shape), $"{parts[i].Part.Kind} goes into {parts[j].Part.Kind}");
                }
            }
        }
    }

    private static double Gap(Placed part, IReadOnlyList<Placed> all)
    {
        if (part.Part.Kind is Apparatus.Heat or Apparatus.Leads || ApparatusRules.IsContents(part.Part.Kind))
        {
            return 0; // An arrow and leads stand nowhere; contents are held to their vessel above.
        }

        return part.Support is null
            ? Math.Abs(part.Shape.Strokes.Min(s => s.Points.Min(p => p.Y)))
            : Nearest(part.Shape, all.Single(p => p.Part == part.Support).Shape);
    }

    private static double Nearest(PartShape one, PartShape other)
    {
        (Spot From, Spot To)[] theirs = [.. Pieces(other)];
        return Pieces(one).Min(a => theirs.Min(b => Plane.Apart(a, b)));
    }

    /// <summary>Whether a line of one crosses a line of the other, or lies within a closed part of it, by more than rounding.</summary>
    private static bool GoesInto(PartShape one, PartShape other)
    {
        if (one.Left >= other.Right || other.Left >= one.Right)
        {
            return false;
        }

        (Spot From, Spot To)[] theirs = [.. Pieces(other)];
        return Pieces(one).Any(a => theirs.Any(b => Crosses(a, b)))
            || other.Strokes.Where(s => s.Closed && s.Role == Stroke.Body).Any(body => one.Strokes.SelectMany(s => s.Points)
                .Any(p => Plane.Inside(body.Points, p) && body.Pieces.Min(piece => Plane.Distance(piece, p)) > Slack));
    }

    private static bool Crosses((Spot From, Spot To) a, (Spot From, Spot To) b) => Plane.Meet(a, b)
        && Math.Min(Off(a, b.From), Off(a, b.To)) > Slack && Math.Min(Off(b, a.From), Off(b, a.To)) > Slack;

    private static double Off((Spot From, Spot To) piece, Spot spot) => Plane.Distance(piece, spot);

    private static IEnumerable<(Spot From, Spot To)> Pieces(PartShape shape) => shape.Strokes.SelectMany(s => s.Pieces);
}
