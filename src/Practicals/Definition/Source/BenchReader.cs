namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what stands on the bench: materials, reactions, parts, places and gauges.</summary>
internal sealed class BenchReader(IdTables ids, FaultList faults)
{
    private readonly FormulaReader formulas = new(faults);
    private readonly EquationReader equations = new(ids, faults);

    public Bench Read(FileMap root)
    {
        IReadOnlyList<Material> materials = root.Each("materials", "a material", Material);
        return new Bench(
            materials,
            root.Each("reactions", "a reaction", map => equations.Reaction(map, materials), needed: false),
            root.Each("parts", "a part", Part, needed: false),
            root.Each("places", "a place", Place, needed: false),
            root.Each("gauges", "a gauge", Gauge, needed: false));
    }

    private Material Material(FileMap map) => new(
        map.Id("id", ids.Materials),
        map.Text("label"),
        formulas.Optional(map, "formula"),
        map.OptionalText("form"),
        map.Flag("air"),
        map.Flag("flammableLiquid"),
        map.At);

    private Part Part(FileMap map) => new(
        map.Id("id", ids.Parts), map.Text("label"), Mass(map), map.Provenance(), map.At);

    private MassRange Mass(FileMap part)
    {
        if (part.Need("mass", "{ typical: ..., low: ..., high: ... } in g") is not FileNode value)
        {
            return new MassRange(0, 0, 0);
        }

        int before = faults.Count;
        var map = new FileMap(value, "a mass", faults);
        var mass = new MassRange(
            map.Number("typical", NumberRange.AboveZero),
            map.Number("low", NumberRange.AboveZero),
            map.Number("high", NumberRange.AboveZero));
        map.Close();
        // What could not be read stands in as 0, of which nothing more is to be said.
        if (faults.Count == before && !(mass.Low <= mass.Typical && mass.Typical <= mass.High))
        {
            faults.Add(map.At, "the typical mass lies from low to high; look at all three, in g");
        }

        return mass;
    }

    private Place Place(FileMap map) => new(
        map.Id("id", ids.Places), map.Text("label"), map.Flag("sealedAndRigid"), map.At);

    private Gauge Gauge(FileMap map) => new(
        map.Id("id", ids.Gauges), map.Text("label"), map.Text("unit"), map.At);
}
