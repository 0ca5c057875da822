namespace Calx.Practicals.Readings;

/// <summary>Which weighing each of several headings of one repeated reading is: the first, the second, ...</summary>
internal static class RepeatNumbers
{
    /// <summary>
    /// Numbers headings that mean one reading, given from left to right. 'After 2' is the second weighing; 'after
    /// reheating' is the second, 'after reheating 2' the third where a 'reheating' or 'reheating 1' stands beside it,
    /// and the second where the reheatings are counted from 2 on, as weighings. Headings without a number take the
    /// free places in order, those that speak of reheating last.
    /// </summary>
    public static int[] Of(IReadOnlyList<(HeadingCandidate Candidate, HeadingText Words)> headings)
    {
        int[] numbers = new int[headings.Count];
        int[] repeats = [.. Enumerable.Range(0, headings.Count).Where(i => headings[i].Candidate.IsRepeat)];
        int first = repeats.Length == 0 ? 1 : repeats.Min(i => headings[i].Candidate.Number ?? 1);
        foreach (int i in repeats)
        {
            int number = headings[i].Candidate.Number ?? 1;
            int place = first >= 2 ? number : number + 1;
            // Two reheatings without numbers follow one another.
            while (headings[i].Candidate.Number is null && numbers.Contains(place))
                place++;
            numbers[i] = place;
        }
        foreach (int i in Enumerable.Range(0, headings.Count).Except(repeats).Where(i => headings[i].Candidate.Number is not null))
            numbers[i] = headings[i].Candidate.Number!.Value;
        foreach (int i in Enumerable.Range(0, headings.Count).Where(i => numbers[i] == 0).OrderBy(i => SpeaksOfRepeat(headings[i].Words)))
            numbers[i] = Enumerable.Range(1, headings.Count + 1).First(place => !numbers.Contains(place));
        return numbers;
    }

    private static bool SpeaksOfRepeat(HeadingText words) => words.Words.Contains("reheat");
}
