namespace Calx.Practicals.Learning;

/// <summary>The likelihood of lessons at one spread of groups and one between lessons, over the grid of mean logarithms.</summary>
/// <param name="Groups">Standard deviation of ln t between the groups of a lesson.</param>
/// <param name="Lessons">Standard deviation of a lesson's mean about its school's: half of the variance lies between classes, half
/// between the lessons of a class.</param>
internal readonly record struct TimeCell(double Groups, double Lessons)
{
    /// <summary>Share of lessons that are like no other; judgement.</summary>
    public const double OddShare = 0.05;

    /// <summary>How far those lie apart, on the scale of the logarithm: a factor of four either way is nothing unheard of. So far
    /// that a single lesson is sooner taken for an odd one than for proof that the file is far off. Judgement.</summary>
    public const double OddSpread = 1.5;

    /// <summary>Standard deviation of a class's mean about the school's, and of a lesson's about its class's.</summary>
    public double Half => Lessons * Math.Sqrt(0.5);

    /// <summary>ln of the likelihood of one class's lessons at each mean of the school.</summary>
    public double[] OfSchool(IReadOnlyList<LessonTimesSeen> lessons) => lessons.Count == 1
        ? OfLesson(lessons[0], Lessons)
        : Logs(TimeGrid.Smoothed(Levelled(OfClass(lessons), out double highest), Half), highest);

    /// <summary>ln of the likelihood of one class's lessons at each mean of the class.</summary>
    public double[] OfClass(IReadOnlyList<LessonTimesSeen> lessons)
    {
        double[] sum = new double[TimeGrid.Points];
        foreach (LessonTimesSeen lesson in lessons)
        {
            double[] logs = OfLesson(lesson, Half);
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i] += logs[i];
            }
        }

        return sum;
    }

    /// <summary>The same numbers divided by the largest, and its logarithm.</summary>
    public static double[] Levelled(double[] logs, out double highest)
    {
        double most = highest = logs.Max();
        return [.. logs.Select(l => Math.Exp(l - most))];
    }

    /// <summary>ln of the likelihood of one lesson at each mean about which it varies.</summary>
    private double[] OfLesson(LessonTimesSeen lesson, double between) =>
        lesson.Unfinished.Length == 0 ? Closed(lesson, between) : ByGrid(lesson, between);

    private double[] Closed(LessonTimesSeen lesson, double between)
    {
        double square = Groups * Groups;
        double fixedPart = (-(lesson.Done - 1) * Math.Log(Groups)) - (lesson.Squares / (2 * square)) - (0.5 * Math.Log(lesson.Done));
        double ordinary = (square / lesson.Done) + (between * between);
        double odd = (square / lesson.Done) + (OddSpread * OddSpread);
        double ordinaryHeight = (1 - OddShare) / Math.Sqrt(ordinary), oddHeight = OddShare / Math.Sqrt(odd);
        double[] logs = new double[TimeGrid.Points];
        for (int i = 0; i < logs.Length; i++)
        {
            double off = lesson.Mean - TimeGrid.At(i);
            off *= off;
            logs[i] = fixedPart + Math.Log((ordinaryHeight * Math.Exp(-0.5 * off / ordinary)) + (oddHeight * Math.Exp(-0.5 * off / odd)));
        }

        return logs;
    }

    private double[] ByGrid(LessonTimesSeen lesson, double between)
    {
        (double[] level, double[] odd, double highest) = lesson.AtSpread(Groups);
        double[] ordinary = TimeGrid.Smoothed(level, between);
        return Logs([.. ordinary.Select((x, i) => ((1 - OddShare) * x) + (OddShare * odd[i]))], highest);
    }

    private static double[] Logs(double[] values, double add) => [.. values.Select(x => Math.Log(Math.Max(x, 1e-300)) + add)];
}
