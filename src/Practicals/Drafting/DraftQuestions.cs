namespace Calx.Practicals.Drafting;

/// <summary>The questions of a draft, in the order in which a person thinks of them. Every one has a default, so that an example comes of
/// answering none.</summary>
public static class DraftQuestions
{
    /// <summary>Key of the question that decides which others are asked, and their defaults.</summary>
    public const string Happens = "happens";

    private static readonly DraftOption[] Families =
    [
        new("heated", "a solid is heated in an open vessel, and its mass rises or falls"),
        new("gas", "things are mixed, and a gas leaves"),
        new("closed", "things are mixed in a closed vessel, and the mass stays the same"),
        new("product", "a solid product is collected, dried and weighed"),
    ];

    private const string Times = "least, likely, most; one number alone is the likely one";

    private static readonly DraftOption[] YesNo = [new("yes", "yes"), new("no", "no")];

    /// <summary>The family that a word names; null where it names none. Nothing said is the first.</summary>
    public static DraftFamily? FamilyOf(string? word)
    {
        int at = string.IsNullOrWhiteSpace(word) ? 0 : Array.FindIndex(Families, f => string.Equals(f.Word, word.Trim(), StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : (DraftFamily)at;
    }

    /// <summary>All questions of a family.</summary>
    public static IReadOnlyList<DraftQuestion> Of(DraftFamily family)
    {
        DraftDefaults usual = DraftDefaults.Of(family);
        bool wet = family != DraftFamily.Heated;
        return
        [
            new(Happens, "What happens?", "", Families, Families[(int)family].Word),
            Text("equation", "The equation", "it need not be balanced; hydrates as CuSO4.5H2O", usual.Equation),
            Text("sample", "The formula of what is weighed out", "empty takes the first in the equation", ""),
            Text("sampleName", "The sample's name in words", "", usual.SampleName),
            Text("product", wet ? "The formula of the solid product" : "The formula of what is left in the vessel", "empty takes the first that is no gas", ""),
            Text("productName", "The product's name in words", "", usual.ProductName),
            Text("title", "What is it called?", "the title on the sheet", usual.Title),
            Text("question", "Which question does the lesson answer?", "", usual.Question),
            Text("id", "A short name for it, as one word", "small letters and dashes; empty makes it from the title", ""),
            Text("vessel", "Which vessel stands on the balance with it?", "", usual.Vessel),
            Text("vesselMass", "The vessel's usual mass / g", "", usual.VesselMass),
            Choice("empty", "Is the vessel weighed before the sample goes in?", "without that weighing there is no mass of the sample", "yes"),
            Text("repeats", usual.RepeatAsk, "at most so many times; 1 is once", usual.Repeats),
            Text("usual", wet ? $"Usual mass of {usual.SampleWord} / g" : "Usual mass of the sample / g", "", usual.Usual),
            Text("largest", "The most that a class may use / g", "empty takes a fifth more than the usual", ""),
            .. wet ? Mixed(usual) : [],
            Text("setUp", "Minutes to set up", Times, "3 5 9"),
            Text("act", usual.ActAsk, Times, usual.Act),
            Text("wait", usual.WaitAsk, Times, usual.Wait),
            Text("workOut", "Minutes to work it out", Times, "4 8 15"),
            Choice("flame", "Is there a naked flame?", "", family == DraftFamily.Heated ? "yes" : "no"),
            .. wet ? [Choice("flammable", "Is one of the liquids flammable, as propanone and ethanol are?", "", "no")] : Array.Empty<DraftQuestion>(),
        ];
    }

    private static DraftQuestion[] Mixed(DraftDefaults usual) =>
    [
        Text("solution", "Mass of the solution that holds the other substances / g", "", usual.Solution),
        Text("excess", "How many times what the sample needs is in it?", "above 1, so that all of the sample can react", "2"),
    ];

    private static DraftQuestion Text(string key, string ask, string hint, string usual) => new(key, ask, hint, [], usual);

    private static DraftQuestion Choice(string key, string ask, string hint, string usual) => new(key, ask, hint, YesNo, usual);
}
