using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Written;

namespace Calx.App.Pages.Answers;

/// <summary>Units to choose from. The list is the same at every question of a practical, so that it gives no unit away.</summary>
public static class AnswerUnits
{
    /// <summary>What is chosen for a value that has no unit.</summary>
    public const string None = "none";

    /// <summary>Units that school calculations of this kind end in, whatever the practical asks. Judgement.</summary>
    private static readonly string[] Common = ["g", "mg", "kg", "mol", "mmol", "g/mol", "cm³", "dm³", "%", "°C", "J", "kJ"];

    /// <summary>Those of a practical, in one order for all its questions.</summary>
    public static IReadOnlyList<string> For(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return [.. Common.Concat(practical.AllAnswers.Select(a => a.Unit)).Where(u => u is not ("" or "1")).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Whether a unit is written behind a number, as in <c>0.24 g</c>.</summary>
    public static bool IsIn(string text) => AnswerText.Read(text) is AnswerText.Number { Unit.Length: > 0 };
}
