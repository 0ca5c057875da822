namespace Calx.Papers.Handouts.Cover;

/// <summary>Shares a lesson out in whole minutes.</summary>
internal static class CoverMinutes
{
    /// <summary>Minutes in the proportion of some shares, whose sum is the lesson: the largest remainders are rounded up.</summary>
    /// <param name="shares">Shares, from 0, not all 0.</param>
    /// <param name="lessonInMinutes">Length of the lesson; what is beyond a whole minute is left at its end.</param>
    public static int[] Of(IReadOnlyList<double> shares, double lessonInMinutes)
    {
        int lesson = (int)Math.Floor(lessonInMinutes);
        double sum = shares.Sum();
        double[] wanted = [.. shares.Select(s => s / sum * lesson)];
        int[] minutes = [.. wanted.Select(w => (int)Math.Floor(w))];
        foreach (int i in Enumerable.Range(0, minutes.Length).OrderByDescending(i => wanted[i] - minutes[i]).ThenBy(i => i).Take(lesson - minutes.Sum()))
        {
            minutes[i]++;
        }

        return minutes;
    }
}
