using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>What is asked of a student who has typed a reading. The reading is kept in any case. A closed set.</summary>
public abstract record ReadingQuery
{
    private ReadingQuery(string? forStudent) => ForStudent = forStudent;

    /// <summary>The words for the student: never what is expected, nor whether anything is odd; null for none.</summary>
    public string? ForStudent { get; }

    /// <summary>Nothing is asked.</summary>
    public sealed record None : ReadingQuery
    {
        internal None()
            : base(forStudent: null)
        {
        }
    }

    /// <summary>It has more or fewer decimals than the balance shows.</summary>
    public sealed record WrongDecimals : ReadingQuery
    {
        internal WrongDecimals(int decimals, EngineLanguage language)
            : base(new StudentTexts(language).TypeAll(new Wording(language).Decimals(decimals))) => Decimals = decimals;

        /// <summary>How many the balance shows.</summary>
        public int Decimals { get; }
    }

    /// <summary>Look at the display again: the reading is most implausible, or one of the ordinary ones that are asked about too, so
    /// that a question gives nothing away. Nobody who sees a student's page is to know which.</summary>
    public sealed record LookAgain : ReadingQuery
    {
        internal LookAgain(bool isImplausible, EngineLanguage language)
            : base(new AdviceTexts(language).LookAgain) => IsImplausible = isImplausible;

        /// <summary>Whether it is implausible: for the teacher's eyes, and never while students can see them.</summary>
        public bool IsImplausible { get; }
    }
}
