namespace Calx.Papers.Tests.Texts;

/// <summary>The same of the engine: what follows from numbers is said by resources too.</summary>
public sealed partial class LiteralTests
{
    /// <summary>Folders of the engine whose sentences can stand on a paper.</summary>
    private static readonly string[] EngineFolders =
        ["CatchUp", "Clock", "Findings", "Inference", "Learning", "Model", "Planning", "Readings", "Watching"];

    /// <summary>Types of other folders whose sentences can.</summary>
    private static readonly string[] EngineTypes = 
    [
        "KnownIdeas", "StudentFeedback", "AnswerReader", "ValueMarker", "WorkMarker", "FormulaJudge", "CauseJudge", "CompletenessJudge", "ImprovementJudge", "OddGroupsOfClass",
        "JudgementChoices", "Grouping", "AdjustedLooks", "MisusedWords",
    ];

    /// <summary>Types that hold the English words by which headings, notes and names are read, and what is told at the command line.</summary>
    private static readonly string[] EngineApart =
    [
        "HeadingLexicon", "HeadingWords", "HeadingUnit", "HeadingMatcher", "HeadingText", "NamedHeading", "RepeatNumbers", "GroupNaming", "CoolingEvidence",
        "GroupProblem", "ArmGroups", "CannotSimulateException",
    ];

    private static readonly string[] EngineNamed =
    [
        // Told to a programmer.
        "One group at least is expected, and each once.", "A finite number of minutes is expected.", "Cells stand in ascending order of column.",
        "Rows stand in ascending order of number.", "At least one column, each with its own id.", " is there twice.", "The sample is more than a class may use.",
        "Readings decide no conclusion '", "A metre weighs more than nothing.", "Prices are from 0.", " is no law of a parameter.", " has no cause '", "There is no idea '",
        "A sample weighs more than nothing.", " is no event of a practical.", "No molar mass stands in an event.", " has no condition '",
        "A mixture has components.", "The shares of a mixture add up to 1.", " is no node of a formula.", "A probability is between 0 and 1.",
        "A number is pooled first.", "There is no group to analyse.", "The readings are of ", ", not of ", "No other case of a fitted line exists.",
        "A result is a finite number with a finite interval.", "Nothing is left in the queue of events.", "A number from ", " to ", " is expected.",
        "Nothing was learned of '", "The practical knows no '", "No instrument shows so many digits.", "A series is taken or not.", "A curve is fitted or not.", "At least one balance is needed.", "No lesson is so long.", "Somebody waits for what nobody will give back.",
        "A share from 0 to 1 is expected.", "Students of different keys are expected, no more than a school year has.", "Minutes from 0 are expected.", "The practical has no rule of constant mass.",
        // Names by which data are told apart, or read back: a student's number, unknown masses, a part of a budget, minutes of cooling.
        "number ", " added to ", "exchanged in ", " before ", "instrument of ", "scale of ", " set ", "series ", "molar masses", "pooled ratio of masses", "flame out {0:0.##} min",
    ];

    [Fact]
    public void No_text_stands_in_the_code_of_the_engine()
    {
        string[] found =
        [
            .. from type in Compiled.Types(TextTopic.Engine)
               where (EngineFolders.Any(f => $"{type.Namespace}.".StartsWith($"Calx.Practicals.{f}.", StringComparison.Ordinal))
                       || EngineTypes.Any(own => $"{type.FullName}+".Contains($".{own}+", StringComparison.Ordinal)))
                   && !EngineApart.Any(apart => $"{type.FullName}+".Contains($".{apart}+", StringComparison.Ordinal))
               from literal in Compiled.Literals(type)
               where literal != type.Name && !EngineNamed.Contains(literal) && IsText(literal)
               select $"{type.FullName}: {literal}",
        ];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }
}
