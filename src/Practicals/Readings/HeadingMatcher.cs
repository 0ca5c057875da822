namespace Calx.Practicals.Readings;

/// <summary>
/// Compares one heading with all that it could mean. Rules from the surest to the least sure; within a rule two
/// different meanings are a tie, which is told and never settled by a guess.
/// </summary>
internal sealed class HeadingMatcher(HeadingLexicon lexicon, IReadOnlyList<HeadingTarget> targets)
{
    /// <summary>All meanings that the heading could have, each by its surest rule.</summary>
    public IReadOnlyList<HeadingCandidate> Candidates(HeadingText heading)
    {
        List<HeadingCandidate> found = [];
        foreach (HeadingTarget target in targets)
        {
            HeadingCandidate? best = null;
            foreach (HeadingPhrase phrase in target.Phrases)
            {
                HeadingCandidate? candidate = Compare(heading, phrase, target);
                if (candidate is not null && (best is null || candidate.Rule < best.Rule))
                    best = candidate;
            }
            if (best is not null)
                found.Add(best);
        }
        return found;
    }

    private HeadingCandidate? Compare(HeadingText heading, HeadingPhrase phrase, HeadingTarget target)
    {
        if (Rule(heading, phrase, target) is not HeadingRule rule)
            return null;
        // A number in the phrase itself ('mass 2') is no repeat; elsewhere only a repeating reading may have one.
        bool own = phrase.Text.Number is not null || heading.Key == phrase.Text.Key;
        if (own && heading.Number != phrase.Text.Number)
            return null;
        int? number = own ? null : heading.Number;
        bool fits = number is null or 1 || (target.Column is { } column && column.Repeats > 1);
        return fits ? new HeadingCandidate(target, rule, number, phrase.IsRepeat) : null;
    }

    private HeadingRule? Rule(HeadingText heading, HeadingPhrase phrase, HeadingTarget target)
    {
        HeadingText text = phrase.Text;
        if (heading.Key == text.Key || (heading.KeyWithoutNumber == text.Key && text.Key.Length > 0))
            return phrase.IsLabel ? HeadingRule.Label : HeadingRule.Alias;
        if (heading.Words.Length > 0 && heading.Words.AsSpan().SequenceEqual(text.Words))
            return HeadingRule.Words;
        if (heading.Core.Length == 0 || text.Core.Length == 0)
            return null;
        if (heading.Core.AsSpan().SequenceEqual(text.Core))
            return HeadingRule.Core;
        if (Spelling.PairOff(heading.Core, text.Core) || Spelling.PairOff(heading.Spelt, text.Spelt))
            return HeadingRule.Spelling;
        return Part(heading, text, target);
    }

    private HeadingRule? Part(HeadingText heading, HeadingText phrase, HeadingTarget target)
    {
        if (phrase.Core.All(heading.Core.Contains))
        {
            bool when = phrase.Core.Any(HeadingWords.SaysWhen);
            bool empty = phrase.Core.Contains("empty");
            return heading.Core.Except(phrase.Core).All(extra => MayStandBy(extra, phrase, heading, target))
                ? empty ? HeadingRule.PartEmpty : when ? HeadingRule.PartWhen : HeadingRule.Part
                : null;
        }
        return target.Column is not null && heading.Core.All(phrase.Core.Contains) ? HeadingRule.Short : null;
    }

    // Which further words leave the meaning as it is. 'Crucible, lid and contents' is not the crucible and lid.
    private bool MayStandBy(string extra, HeadingText phrase, HeadingText heading, HeadingTarget target)
    {
        bool weighing = target.Column is { Kind: ExpectedKind.Weighing };
        bool when = phrase.Core.Any(HeadingWords.SaysWhen);
        bool empty = phrase.Core.Contains("empty");
        if (HeadingWords.Turns(extra))
            return false;
        if (HeadingWords.SaysWhen(extra))
            return empty && extra == "before";
        if (lexicon.IsVessel(extra))
            return weighing;
        if (lexicon.IsMaterial(extra))
            return weighing && when;
        if (HeadingWords.IsHarmless(extra))
            return true;
        // A word never heard of may stand by two or more that were, in a heading that is plainly of a mass.
        bool mass = heading.Unit is not null || heading.Words.Contains("mass");
        return mass && phrase.Core.Length >= 2 && !phrase.Core.All(lexicon.IsVessel)
            && !targets.Any(other => other.Vocabulary.Contains(extra));
    }
}
