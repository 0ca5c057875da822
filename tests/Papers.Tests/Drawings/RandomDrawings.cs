using Calx.Practicals.Definition;
using CsCheck;

namespace Calx.Papers.Tests.Drawings;

/// <summary>Drawings of any parts in any places that the rules allow, of at most as many parts as a file may have.</summary>
internal static class RandomDrawings
{
    private static readonly string[] Words = ["tin", "small evaporating basin with its lip", "sodium hydrogencarbonate", "a", "WWWWWWWWWWWWWWWWWWWWWWWW", "lid, ajar"];

    public static Gen<Drawing> All { get; } =
        from first in Gen.OneOf(ApparatusRules.OnBench.Select(kind => Part(kind, 4)).ToArray())
        from more in Gen.OneOf(ApparatusRules.OnBench.Select(kind => Part(kind, 4)).ToArray()).Array[0, 2]
        let drawing = Of([first, .. more])
        where drawing.Parts.Count() <= ApparatusRules.MostParts
        select drawing;

    /// <summary>Every part of a rule once: each kind in each place that takes it.</summary>
    public static IEnumerable<Drawing> EveryPlace()
    {
        foreach (Apparatus kind in ApparatusRules.OnBench)
        {
            foreach (DrawnPart part in Filled(kind))
            {
                yield return Of([part]);
            }
        }
    }

    public static Drawing Of(IReadOnlyList<DrawnPart> shows) => new("any", "any drawing", [], shows, default);

    public static DrawnPart One(Apparatus kind, params (DrawnPlace Place, DrawnPart Part)[] others) => new(
        kind,
        ApparatusRules.LabelOf(kind),
        new DrawnState(kind == Apparatus.Lid, kind is Apparatus.Burner or Apparatus.SpiritBurner, null),
        others.GroupBy(o => o.Place).ToDictionary(g => g.Key, g => (IReadOnlyList<DrawnPart>)[.. g.Select(o => o.Part)]),
        default);

    private static IEnumerable<DrawnPart> Filled(Apparatus kind)
    {
        yield return One(kind);
        foreach (DrawnPlace place in Enum.GetValues<DrawnPlace>())
        {
            foreach (DrawnPart other in ApparatusRules.At(kind, place).SelectMany(Filled))
            {
                yield return One(kind, (place, other));
            }
        }
    }

    private static Gen<DrawnPart> Part(Apparatus kind, int depth)
    {
        Gen<(DrawnPlace, DrawnPart[])>[] places =
        [
            .. Enum.GetValues<DrawnPlace>().Where(place => depth > 0 && ApparatusRules.At(kind, place).Count > 0).Select(place =>
                from parts in Gen.OneOf(ApparatusRules.At(kind, place).Select(k => Part(k, depth - 1)).ToArray()).Array[0, ApparatusRules.TakesMany(kind, place) ? 3 : ApparatusRules.Most(kind, place)]
                select (place, parts)),
        ];
        return
            from label in Gen.OneOf(Gen.Int[0, Words.Length - 1].Select(i => Words[i]), Gen.Const(ApparatusRules.LabelOf(kind)))
            from level in Gen.Double[0.05, 0.9]
            from usual in Gen.Bool
            from yes in Gen.Bool
            from others in Sequence(places)
            select new DrawnPart(
                kind,
                label,
                new DrawnState(kind == Apparatus.Lid && yes, kind is Apparatus.Burner or Apparatus.SpiritBurner && yes, ApparatusRules.IsContents(kind) && !usual ? level : null),
                others.ToDictionary(o => o.Item1, o => (IReadOnlyList<DrawnPart>)o.Item2),
                default);
    }

    private static Gen<(DrawnPlace, DrawnPart[])[]> Sequence(Gen<(DrawnPlace, DrawnPart[])>[] gens) => gens.Aggregate(
        Gen.Const(Array.Empty<(DrawnPlace, DrawnPart[])>()),
        (done, next) => from before in done from one in next select before.Append(one).ToArray());
}
