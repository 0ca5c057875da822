using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A drawing in words, for those who cannot see it.</summary>
internal static class DrawingWords
{
    /// <summary>What stands where, from the bench upwards.</summary>
    public static string Of(Drawing drawing, PaperLanguage language)
    {
        DrawingTexts texts = new(language);
        return texts.Description(string.Join("; ", drawing.Shows.SelectMany(part => Said(part, texts.Part(part.Label, State(part.State, texts)), texts))));
    }

    private static IEnumerable<string> Said(DrawnPart part, string said, DrawingTexts texts)
    {
        yield return said;
        foreach ((DrawnPlace place, Func<string, string, string, string> words) in ((DrawnPlace, Func<string, string, string, string>)[])
        [
            (DrawnPlace.In, texts.PartIn), (DrawnPlace.On, texts.PartOn), (DrawnPlace.Holds, texts.PartHeldBy), (DrawnPlace.Under, texts.PartUnder), (DrawnPlace.Joins, texts.PartJoinedBy),
            (DrawnPlace.Beside, texts.PartBeside),
        ])
        {
            foreach (string other in part.Others(place).SelectMany(o => Said(o, words(o.Label, part.Label, State(o.State, texts)), texts)))
            {
                yield return other;
            }
        }
    }

    private static string State(DrawnState state, DrawingTexts texts) => state.Flame ? texts.Lit : state.Ajar ? texts.Ajar : string.Empty;
}
