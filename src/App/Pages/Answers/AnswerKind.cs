namespace Calx.App.Pages.Answers;

/// <summary>How a question is answered.</summary>
public enum AnswerKind
{
    /// <summary>By a number, with a unit.</summary>
    Value,

    /// <summary>By a chemical formula, typed.</summary>
    Formula,

    /// <summary>By choosing.</summary>
    Choice,

    /// <summary>In words.</summary>
    Words,
}
