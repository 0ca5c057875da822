using Calx.Papers.Drawings.Parts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>Puts the parts of a drawing where they stand: on the bench from left to right, and each with what is on, in, under
/// or held by it, touching what supports it. All in mm of real apparatus, so that the drawing has one scale.</summary>
internal static class Arrangement
{
    private const double BetweenNeighbours = 22;

    /// <summary>All parts of a drawing, each where it is; the bench at y = 0.</summary>
    public static IReadOnlyList<Placed> Of(Drawing drawing) => Row(drawing.Shows, on: null).Parts;

    /// <summary>Parts side by side, about x = 0.</summary>
    public static Cluster Row(IReadOnlyList<DrawnPart> parts, DrawnPart? on)
    {
        Cluster row = Cluster.Empty;
        double end = 0;
        foreach (DrawnPart part in parts.SelectMany(WithNeighbours))
        {
            Cluster one = Standing(part, on);
            row = row.With(one.Moved(end - one.Left, 0));
            end += one.Right - one.Left + BetweenNeighbours;
        }

        return row.Parts.Count == 0 ? row : row.Moved(-(end - BetweenNeighbours) / 2, 0);
    }

    private static IEnumerable<DrawnPart> WithNeighbours(DrawnPart part) =>
        [part, .. part.Others(DrawnPlace.Beside).SelectMany(WithNeighbours)];

    /// <summary>A part with all that it carries, itself in the middle at y = 0.</summary>
    /// <param name="part">The part.</param>
    /// <param name="on">What it stands on or is held by; null for the bench.</param>
    /// <param name="ceiling">Height in mm of what dips into it, below which its contents stay; null for its mouth.</param>
    public static Cluster Standing(DrawnPart part, DrawnPart? on, double? ceiling = null) => part.Kind switch
    {
        Apparatus.Mat => OnMat(part, on),
        Apparatus.Tripod => OverHeat(part, on),
        Apparatus.Triangle => InTriangle(part, on),
        Apparatus.Clamp => Clamped.By(part, on),
        Apparatus.Flask when part.Other(DrawnPlace.On) is { Kind: Apparatus.Filter } => UnderFunnel(part, on),
        Apparatus.Beaker when part.Other(DrawnPlace.On) is { Kind: Apparatus.Basin } basin => UnderBasin(part, basin, on),
        Apparatus.Beaker when part.Other(DrawnPlace.On) is { Kind: Apparatus.Holder } holder => UnderHolder(part, holder, on),
        Apparatus.Beaker when part.Others(DrawnPlace.In).Any(p => p.Kind == Apparatus.ReductionTube) => AroundTube(part, on),
        Apparatus.ReductionTube => Lying(part, on),
        Apparatus.Leads => Circuit.Of(part, on),
        Apparatus.Stopper => Carrying(part, Stopper.In(NeckOf(on)), on),
        Apparatus.Plug => Carrying(part, Plug.In(NeckOf(on)), on),
        _ => Carrying(part, Shape(part), on, ceiling),
    };

    /// <summary>A part with its contents, and with what stands on its top.</summary>
    public static Cluster Carrying(DrawnPart part, PartShape shape, DrawnPart? on, double? ceiling = null)
    {
        Cluster whole = Cluster.Of(part, shape, on).With(Filling.Of(part, shape, ceiling));
        whole = part.Others(DrawnPlace.In).Where(p => !ApparatusRules.IsContents(p.Kind)).Aggregate(whole, (sum, inside) =>
            sum.With(Standing(inside, part).Moved(0, shape.Cavity!.Bottom)));
        return part.Others(DrawnPlace.On).Aggregate(whole, (sum, carried) =>
            sum.With(Standing(carried, part).Moved(carried.State.Ajar ? Lid.Ajar : 0, shape.Top)));
    }

    private static Cluster OnMat(DrawnPart part, DrawnPart? on)
    {
        Cluster row = Row(part.Others(DrawnPlace.On), part);
        PartShape mat = Mat.Under(row.Parts.Count == 0 ? 0 : row.Right - row.Left);
        return Cluster.Of(part, mat, on).With(row.Moved(0, mat.Top));
    }

    private static Cluster OverHeat(DrawnPart part, DrawnPart? on)
    {
        Cluster upper = Carrying(part, Tripod.Shape(bare: part.Other(DrawnPlace.On) is null), on);
        return part.Others(DrawnPlace.Under).Aggregate(upper, (sum, source) => sum.With(Source.Under(upper, source, on, stands: 0)));
    }

    private static Cluster InTriangle(DrawnPart part, DrawnPart? on)
    {
        const double Grip = 18;
        const double Alone = 14;
        DrawnPart? held = part.Other(DrawnPlace.On);
        if (held is null)
        {
            return Cluster.Of(part, Triangle.Around(Alone), on);
        }

        double half = Crucible.Shape().Cavity!.HalfAt(Grip);
        return Cluster.Of(part, Triangle.Around(half), on).With(Standing(held, part).Moved(0, Triangle.PipeTop - Grip));
    }

    /// <summary>A water bath: the basin sits in the mouth of the beaker, and the water stays below it.</summary>
    private static Cluster UnderBasin(DrawnPart part, DrawnPart basin, DrawnPart? on)
    {
        PartShape beaker = Beaker.Shape();
        return Cluster.Of(part, beaker, on).With(Filling.Of(part, beaker, Beaker.BasinSits)).With(Standing(basin, part).Moved(0, Beaker.BasinSits));
    }

    /// <summary>Strips that hang from a holder across the rim; what is in the beaker leaves them out.</summary>
    private static Cluster UnderHolder(DrawnPart part, DrawnPart holder, DrawnPart? on)
    {
        IReadOnlyList<DrawnPart> strips = holder.Others(DrawnPlace.Holds);
        double[] slots = Holder.Slots(strips.Count);
        PartShape beaker = Beaker.Shape();
        double rim = beaker.Height;
        beaker = beaker with { Dips = [.. slots.Select(x => new Dip(x - Strip.Half, x + Strip.Half, rim - Strip.Below))] };
        Cluster whole = Cluster.Of(part, beaker, on).With(Filling.Of(part, beaker)).With(Cluster.Of(holder, Holder.Shape(strips.Count), part).Moved(0, rim));
        return strips.Zip(slots).Aggregate(whole, (sum, strip) => sum.With(Cluster.Of(strip.First, Strip.Hanging(), holder).Moved(strip.Second, rim)));
    }

    /// <summary>A reduction tube that leans in a beaker, so that it can be weighed; what else is in the beaker stays beside it.</summary>
    private static Cluster AroundTube(DrawnPart part, DrawnPart? on)
    {
        DrawnPart tube = part.Others(DrawnPlace.In).First(p => p.Kind == Apparatus.ReductionTube);
        Spot foot = new Spot(ReductionTube.End, 0).Turned(ReductionTube.Leaning);
        Cluster leaning = InPlace(tube, part).Turned(ReductionTube.Leaning).Moved(-foot.X, ReductionTube.Half - foot.Y);
        PartShape beaker = Beaker.Shape();
        beaker = beaker with { Dips = [new Dip(-ReductionTube.Half, leaning.Right, 0)] };
        return Cluster.Of(part, beaker, on).With(Filling.Of(part, beaker)).With(leaning);
    }

    /// <summary>A reduction tube as a clamp holds it: nearly level, its lowest at y = 0.</summary>
    private static Cluster Lying(DrawnPart part, DrawnPart? on) => InPlace(part, on).Turned(ReductionTube.Tilt).Moved(0, ReductionTube.AxisAbove);

    /// <summary>A reduction tube along the x axis, with its heap, its gas and its flame.</summary>
    private static Cluster InPlace(DrawnPart part, DrawnPart? on)
    {
        PartShape tube = ReductionTube.Shape();
        Cluster whole = Cluster.Of(part, tube, on).With(Filling.Of(part, tube));
        whole = part.Others(DrawnPlace.On).Aggregate(whole, (sum, jet) => sum.With(Cluster.Of(jet, Jet.Shape(), part)));
        return part.Others(DrawnPlace.Joins).Aggregate(whole, (sum, gas) => sum.With(Cluster.Of(gas, Gas.Shape(), part)));
    }

    private static double NeckOf(DrawnPart? vessel) => vessel?.Kind == Apparatus.Bottle ? Bottle.Neck : Flask.Neck;

    /// <summary>A funnel hangs in the mouth by its cone; what is in the flask stays below its stem.</summary>
    private static Cluster UnderFunnel(DrawnPart part, DrawnPart? on)
    {
        PartShape flask = Flask.Shape();
        DrawnPart funnel = part.Other(DrawnPlace.On)!;
        double tip = Flask.Mouth - Filter.HeightAt(Flask.Neck);
        return Cluster.Of(part, flask, on).With(Filling.Of(part, flask, tip)).With(Standing(funnel, part).Moved(0, tip));
    }

    private static PartShape Shape(DrawnPart part) => part.Kind switch
    {
        Apparatus.Gauze => Gauze.Shape(),
        Apparatus.Burner => Burner.Shape(part.State.Flame ? Source.LeastFlame : null),
        Apparatus.SpiritBurner => SpiritBurner.Shape(Source.IsLit(part) ? Source.LeastFlame : null),
        Apparatus.Cap => Cap.Shape(),
        Apparatus.Can => Can.Shape(),
        Apparatus.Supply => Supply.Shape(),
        Apparatus.Ammeter => Ammeter.Shape(),
        Apparatus.Resistor => Resistor.Shape(),
        Apparatus.Strip => Strip.Lying(),
        Apparatus.Crucible => Crucible.Shape(),
        Apparatus.Lid => Lid.Shape(),
        Apparatus.Basin => Basin.Shape(),
        Apparatus.Beaker => Beaker.Shape(),
        Apparatus.Flask => Flask.Shape(),
        Apparatus.Jar => Jar.Shape(),
        Apparatus.Cover => Cover.Shape(),
        Apparatus.Bottle => Bottle.Shape(),
        Apparatus.Candle => Candle.Shape(part.State.Flame),
        Apparatus.Tube => Tube.Shape(),
        Apparatus.Filter => Filter.Shape(),
        Apparatus.Balance => Balance.Shape(),
        Apparatus.Tongs => Tongs.Shape(),
        _ => throw new ArgumentException($"{part.Kind} does not stand by itself.", nameof(part)),
    };
}
