namespace Calx.Practicals.Drafting;

/// <summary>What is taken where a question is not answered: an example of each family. All of it is judgement.</summary>
internal sealed record DraftDefaults(
    string Title,
    string Question,
    string Equation,
    string SampleName,
    string ProductName,
    string SampleWord,
    string Vessel,
    string VesselMass,
    string Usual,
    string Repeats,
    string RepeatAsk,
    string Solution,
    string Act,
    string ActAsk,
    string Wait,
    string WaitAsk)
{
    public static DraftDefaults Of(DraftFamily family) => family switch
    {
        DraftFamily.Heated => new(
            "Heating zinc carbonate", "What happens to the mass when zinc carbonate is heated?", "ZnCO3 -> ZnO + CO2", "zinc carbonate", "zinc oxide", "the sample",
            "crucible", "18", "2.0", "3", "How often is it heated, cooled and weighed?", "0",
            "5 8 12", "Minutes of heating", "7 10 20", "Minutes of cooling"),
        DraftFamily.Gas => new(
            "Sodium hydrogencarbonate and acid", "How much mass is lost when a gas leaves?", "NaHCO3 + HCl -> NaCl + CO2 + H2O", "sodium hydrogencarbonate", "sodium chloride", "the sample",
            "flask and cotton-wool plug", "90", "2.0", "1", "How often is it left to stand, swirled and weighed?", "60",
            "4 6 10", "Minutes until the fizzing has stopped", "2 4 8", "Minutes of standing and swirling before each weighing"),
        DraftFamily.Closed => new(
            "A solid out of two solutions", "What happens to the mass when two solutions make a solid in a closed flask?", "CaCl2 + Na2CO3 -> CaCO3 + NaCl", "calcium chloride", "calcium carbonate", "the first solution",
            "flask, small tube and stopper", "130", "10", "1", "How often is it weighed after mixing?", "30",
            "1 2 4", "Minutes of mixing", "1 2 4", "Minutes of waiting before the weighing"),
        _ => new(
            "Chalk from two solutions", "How much solid can be made?", "CaCl2 + Na2CO3 -> CaCO3 + NaCl", "calcium chloride", "calcium carbonate", "the sample",
            "dish", "38", "1.5", "2", "How often is it dried and weighed?", "60",
            "10 15 25", "Minutes of mixing, filtering and washing", "10 14 20", "Minutes of drying and cooling before each weighing"),
    };
}
