using Calx.Practicals.Definition;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>The usual wrong answers, worked from the readings of the key, and what each reveals.</summary>
internal static class KeyWrongAnswers
{
    /// <summary>So many rows leave the key on one side.</summary>
    private const int MostRows = 6;
    private const int MostOfMain = 4;

    /// <summary>Ideas named beside one value; rarer ones are left to the marking.</summary>
    private const int MostIdeas = 2;

    public static IEnumerable<PaperBlock> Of(PaperSetting setting, AnswerKeyTexts texts)
    {
        UsualWrongAnswer[] all = [.. UsualWrongAnswers.Of(setting.Practical, ExpectedAnswers.ReadingsOf(setting.Plan), AtomicWeights.Iupac2024, MostOfMain)];
        if (all.Length == 0)
        {
            return [];
        }

        // The main answer is where most that went wrong before shows; of the others the most usual of each.
        string? main = UsualWrongAnswers.Main(setting.Practical)?.Id;
        UsualWrongAnswer[] shown =
        [
            .. all.Where(w => w.Answer.Id != main).GroupBy(w => w.Answer.Id).Select(g => g.First()).Take(MostRows - MostOfMain),
            .. all.Where(w => w.Answer.Id == main),
        ];
        int decimals = setting.Plan.Settings.Balances[0].Decimals;
        return
        [
            new PaperBlock.Heading(texts.WrongHeading),
            new PaperBlock.Table(new PaperTable(
                [new(texts.AskedColumn, 3.2), new(texts.ValueColumn, 0.9, true), new(texts.RevealsColumn, 6.4)],
                [
                    .. shown.Select((w, i) => (PaperCell[])
                    [
                        new PaperCell(i > 0 && shown[i - 1].Answer == w.Answer ? string.Empty : Text.Capital(w.Answer.Label), IsHeading: true),
                        Number(setting.Practical, w, decimals),
                        Text.Capital(w.Ideas.Take(MostIdeas).Select(i => KnownIdeas.LabelOf(i, setting.Language.Engine)).Aggregate(texts.OrIdea)),
                    ]),
                ])),
        ];
    }

    private static string Number(Practical practical, UsualWrongAnswer wrong, int decimals) => (AnswerFigures.Decimals(wrong.Answer, wrong.Value, decimals, practical) is int places
        ? wrong.Value.ToString($"F{places}", CultureInfo.InvariantCulture) : AnswerFigures.Rounded(wrong.Value)).Replace('-', '−');
}
