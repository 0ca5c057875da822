using Calx.Measurement.Statistics.Series;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what a conclusion says of a quantity.</summary>
internal sealed class ConclusionReader(IdTables ids, FaultList faults)
{
    private static readonly string[] Kinds = ["rises", "falls", "stays", "chooses", "within", "known", "order"];

    /// <summary>The order that a conclusion ascribes to the curve; null where its test is another one.</summary>
    public KineticOrder? Order { get; private set; }

    /// <summary>The test of quantities, or null where the conclusion has none.</summary>
    public ConclusionTest? Test(FileMap conclusion)
    {
        if (conclusion.Map("test", "the test of a conclusion") is not FileMap map || map.Single(Kinds) is not FileEntry entry)
        {
            return null;
        }

        if (entry.Key.Text == "order")
        {
            Order = OrderOf(map, entry.Key.At);
            return null;
        }

        return entry.Key.Text switch
        {
            "rises" => conclusion.ReferenceOf(entry.Value, ids.Quantities) is string up ? new ConclusionTest.Moves(up, up: true) : null,
            "falls" => conclusion.ReferenceOf(entry.Value, ids.Quantities) is string down ? new ConclusionTest.Moves(down, up: false) : null,
            "stays" => Stays(conclusion, entry.Value),
            "chooses" => Chooses(entry.Value),
            "known" => Known(entry.Value),
            _ => Within(entry.Value),
        };
    }

    private ConclusionTest.Stays? Stays(FileMap conclusion, FileNode value)
    {
        if (value is ScalarNode)
        {
            return conclusion.ReferenceOf(value, ids.Quantities) is string same ? new ConclusionTest.Stays(same, 0) : null;
        }

        var map = new FileMap(value, "a mass that stays", faults);
        var stays = new ConclusionTest.Stays(map.Reference("quantity", ids.Quantities), map.Number("within", NumberRange.AboveZero));
        map.Close();
        return stays;
    }

    private KineticOrder OrderOf(FileMap map, FilePosition at)
    {
        if (ids.Curves.All.Count == 0)
        {
            faults.Add(at, "an order is told by a curve, and this practical has no 'series'");
        }

        return map.Word("order", SeriesReader.Orders);
    }

    private ConclusionTest.Chooses Chooses(FileNode value)
    {
        var map = new FileMap(value, "the choice of a number", faults);
        string quantity = map.Reference("quantity", ids.Quantities);
        double[] among = [.. map.Nodes("among", "a number").Select(n => map.NumberOf(n, NumberRange.AboveZero) ?? 1)];
        if (map.Find("among") is FileNode list && (among.Length < 2 || !among.SequenceEqual(among.Distinct().Order())))
        {
            faults.Add(list.At, "a choice has two numbers or more, rising; without 'among' it is between the findings' alternatives");
        }

        map.Close();
        return new ConclusionTest.Chooses(quantity, among);
    }

    private ConclusionTest.Within Within(FileNode value)
    {
        var map = new FileMap(value, "nearness to the accepted value", faults);
        var within = new ConclusionTest.Within(map.Reference("quantity", ids.Quantities), map.Number("share", NumberRange.ShareAboveZero));
        map.Close();
        return within;
    }

    private ConclusionTest.Known Known(FileNode value)
    {
        var map = new FileMap(value, "how closely a quantity is to be known", faults);
        var known = new ConclusionTest.Known(map.Reference("quantity", ids.Quantities), map.Number("share", NumberRange.ShareAboveZero));
        map.Close();
        return known;
    }
}
