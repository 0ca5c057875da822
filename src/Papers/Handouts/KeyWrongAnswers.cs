using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Practicals.Marking;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>The usual wrong answers, worked from the readings of the key, and what each reveals.</summary>
internal static class KeyWrongAnswers
{
    /// <summary>So many rows leave the key on one side.</summary>
    private const int MostRows = 9;
    private const int MostOfLast = 6;

    /// <summary>Ideas named beside one value; rarer ones are left to the marking.</summary>
    private const int MostIdeas = 3;

    public static IEnumerable<PaperBlock> Of(PaperSetting setting)
    {
        UsualWrongAnswer[] all = [.. UsualWrongAnswers.Of(setting.Practical, ExpectedAnswers.ReadingsOf(setting.Plan), AtomicWeights.Iupac2024, MostOfLast)];
        if (all.Length == 0)
        {
            return [];
        }

        // The last answer is where most that went wrong before shows; of each earlier one the most usual.
        string last = all[^1].Answer.Id;
        UsualWrongAnswer[] shown =
        [
            .. all.Where(w => w.Answer.Id != last).GroupBy(w => w.Answer.Id).Select(g => g.First()).Take(MostRows - MostOfLast),
            .. all.Where(w => w.Answer.Id == last),
        ];
        int decimals = setting.Plan.Settings.Balances[0].Decimals;
        return
        [
            new PaperBlock.Heading("Usual wrong answers, from the same readings"),
            new PaperBlock.Table(new PaperTable(
                [new("Answer", 2.6), new("Value", 1, true), new("What it may reveal", 6)],
                [
                    .. shown.Select(w => (PaperCell[])
                    [
                        new PaperCell(Text.Capital(w.Answer.Label), IsHeading: true),
                        Number(w, decimals),
                        Text.Capital(string.Join("; or ", w.Ideas.Take(MostIdeas).Select(i => i.Label))),
                    ]),
                ])),
        ];
    }

    private static string Number(UsualWrongAnswer wrong, int decimals) => (AnswerFigures.Decimals(wrong.Answer, wrong.Value, decimals) is int places
        ? wrong.Value.ToString($"F{places}", CultureInfo.InvariantCulture) : wrong.Value.ToString("G3", CultureInfo.InvariantCulture)).Replace('-', '−');
}
