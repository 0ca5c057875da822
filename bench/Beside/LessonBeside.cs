using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>Lessons of the plain class beside SimPy, one event at a time, and beside numpy, all lessons in lockstep.</summary>
internal static class LessonBeside
{
    private const double LeastRatioToSimPy = 10;

    /// <summary>Of SimPy's own figures, tests/reference/computed/lesson_simpy.csv: 0.4196 by 55 min, 0.9913 by 60 min.</summary>
    private const double LeastDone = 0.4196;
    private const double MostDone = 0.9913;

    public static bool Run(SideBySide side)
    {
        var own = new LessonBenchmark();
        bool plain = side.Compare(
            "12 groups on 2 balances, all heated twice", "lessons", new Peer("lesson.py", "4000", "simpy"), LessonBenchmark.Lessons, Plain, LeastRatioToSimPy);
        bool lockstep = side.Compare(
            "the same beside numpy, which does only this class", "lessons", new Peer("lesson.py", "200000", "numpy"), LessonBenchmark.Lessons, Plain);
        bool decided = side.Compare(
            "the same with reheats decided by drawn readings, beside SimPy without", "lessons", new Peer("lesson.py", "4000", "simpy"), LessonBenchmark.Lessons, Decided);
        return plain && lockstep && decided;

        bool Plain() => own.PlainLessons() is > LeastDone and < MostDone;

        // A reheat more in one group of five makes most lessons longer than 56 min.
        bool Decided() => own.LessonsWithReheatsDecided() is > 0.01 and < LeastDone;
    }
}
