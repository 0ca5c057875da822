using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What is said of a class whose groups did the practical in several ways: of each way by itself.</summary>
internal static class ArmWords
{
    /// <summary>The same, with what was written for arms and is none of the practical's told.</summary>
    public static ClassFindings WithUnknown(ClassFindings found)
    {
        string[] unknown = [.. ArmGroups.Unknown(found.Practical, found.Readings).Select(new Wording(found.Language).Quoted)];
        if (unknown.Length == 0)
        {
            return found;
        }

        string told = new ConclusionTexts(found.Language).UnknownArms(new Wording(found.Language).And(unknown));
        ClassResult result = found.Class.Saying([new ConclusionSentence(ConclusionTopic.Arms, told), .. found.Class.Sentences], found.Class.Accepted);
        return new ClassFindings(found.Practical, found.Readings, found.Identifiability, found.Groups, result, found.Language);
    }

    /// <summary>The result of all groups together with the sentences of each way in place of its own.</summary>
    public static ClassResult Told(
        Practical practical, ClassReadings readings, ClassResult all, IReadOnlyList<ArmFindings> arms, EngineLanguage language)
    {
        var (texts, wording) = (new ConclusionTexts(language), new Wording(language));
        string[] unknown = [.. ArmGroups.Unknown(practical, readings).Select(wording.Quoted)];
        string ways = texts.SeveralWays(wording.Count(arms.Count));
        ConclusionSentence[] sentences =
        [
            .. all.Sentences.Where(s => s.Topic == ConclusionTopic.Simulated),
            new(ConclusionTopic.Arms, unknown.Length == 0 ? ways : $"{ways} {texts.UnknownArms(wording.And(unknown))}"),
            .. arms.SelectMany(arm => arm.Result.Sentences.Where(s => s.Topic != ConclusionTopic.Simulated).Select(s => new ConclusionSentence(
                s.Topic, texts.OfArm(Wording.Capital(arm.Label), s.Text), texts.OfArm(Wording.Capital(arm.Label), s.WithoutNames), s.MentionsOdd))),
            .. all.Sentences.Where(s => s.Topic == ConclusionTopic.Uncounted),
        ];
        double?[] accepted = [.. arms.Select(a => (a.Result.Accepted as AcceptedResult.Compared)?.Accepted)];
        bool alike = accepted.All(a => a is double value && Math.Abs(value - accepted[0]!.Value) <= 1e-9 * Math.Abs(value));
        return all.Saying(sentences, alike || all.Accepted is AcceptedResult.None ? all.Accepted : new AcceptedResult.None(texts.AcceptedOfEachWay));
    }
}
