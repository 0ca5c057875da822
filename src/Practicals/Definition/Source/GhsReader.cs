using System.Text.RegularExpressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads how a substance is classified.</summary>
internal static partial class GhsReader
{
    private static readonly Dictionary<string, GhsSignal> Signals = new(StringComparer.Ordinal)
    {
        ["none"] = GhsSignal.None,
        ["warning"] = GhsSignal.Warning,
        ["danger"] = GhsSignal.Danger,
    };

    /// <summary>The classification under the key <c>ghs</c>, or null.</summary>
    public static GhsClassification? Read(FileMap hazard, FaultList faults)
    {
        if (hazard.Map("ghs", "a classification by GHS") is not FileMap map)
        {
            return null;
        }

        GhsSignal signal = map.Word("signal", Signals);
        IReadOnlyList<string> classes = map.Texts("classes"), codes = map.Texts("codes");
        foreach (string code in codes.Where(c => !Statement().IsMatch(c)))
        {
            faults.Add(map.At, $"'{code}' is no code of a hazard statement; expected H and three digits, such as H318");
        }

        if ((signal == GhsSignal.None) != (classes.Count == 0) && codes.Count > 0)
        {
            faults.Add(map.At, "a substance with hazard statements has classes and a signal word; expected 'classes', and 'signal' warning or danger");
        }

        var read = new GhsClassification(signal, classes, codes, map.Provenance());
        map.Close();
        return read;
    }

    [GeneratedRegex(@"^H[2-4][0-9]{2}[A-Za-z]{0,2}\z")]
    private static partial Regex Statement();
}
