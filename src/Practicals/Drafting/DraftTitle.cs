namespace Calx.Practicals.Drafting;

/// <summary>What a practical is called where its equation was answered and its title was not: after its sample, never after the example.</summary>
internal static class DraftTitle
{
    /// <summary>Offers title, question and names of the substances as what is taken where nothing is answered.</summary>
    public static void Offer(DraftFamily family, DraftEquation equation, DraftWords words)
    {
        if (words.Typed("equation").Length == 0)
        {
            return;
        }

        string sample = equation.Sample.Name;
        (string title, string question) = family switch
        {
            DraftFamily.Heated when DraftHydrate.Of(family, equation) is not null => ($"Heating {sample}", $"How many moles of water go with one mole of the salt in {sample}?"),
            DraftFamily.Heated => ($"Heating {sample}", $"What happens to the mass when {sample} is heated?"),
            DraftFamily.Gas => ($"Gas from {sample}", $"How much mass is lost when a gas leaves {sample}?"),
            DraftFamily.Closed => ($"{Capital(sample)} in a closed vessel", $"What happens to the mass when {sample} reacts in a closed vessel?"),
            _ => ($"A solid made from {sample}", $"How much solid can be made from {sample}?"),
        };
        words.Offer("title", title);
        words.Offer("question", question);
        words.Offer("sampleName", sample);
        if (equation.Product is DraftSpecies product)
        {
            words.Offer("productName", product.Name);
        }
    }

    private static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
