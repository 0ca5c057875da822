using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>Something that a check of a file found.</summary>
/// <param name="Kind">How much it weighs.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Character in that line, from 1.</param>
/// <param name="Problem">What is wrong, without a full stop.</param>
/// <param name="Cure">What to do about it, or null where the problem says what was expected.</param>
public sealed record CheckFinding(CheckKind Kind, int Line, int Column, string Problem, string? Cure)
{
    private const string Joint = "; ";
    private const string LookUpJoint = ": ";

    /// <summary>Takes a fault of reading the file; what stands behind its first semicolon (of something to look up, its colon) is the cure.</summary>
    internal static CheckFinding Of(CheckKind kind, DefinitionFault fault)
    {
        int joint = fault.Reason.IndexOf(kind == CheckKind.LookUp ? LookUpJoint : Joint, StringComparison.Ordinal);
        return joint < 0
            ? new CheckFinding(kind, fault.Line, fault.Column, fault.Reason, null)
            : new CheckFinding(kind, fault.Line, fault.Column, fault.Reason[..joint], fault.Reason[(joint + Joint.Length)..]);
    }

    /// <summary>Takes what a check across the file found.</summary>
    internal static CheckFinding At(FilePosition at, string problem, string cure, CheckKind kind = CheckKind.DoesNotHold) =>
        new(kind, Math.Max(1, at.Line), Math.Max(1, at.Column), problem, cure);

    /// <summary>Problem and cure in one clause.</summary>
    public string Sentence => Cure is null ? Problem : Problem + (Kind == CheckKind.LookUp ? LookUpJoint : Joint) + Cure;

    /// <summary><c>file:line:column: problem; cure</c>.</summary>
    /// <param name="file">The file's name.</param>
    public string In(string file) => string.Create(CultureInfo.InvariantCulture, $"{file}:{Line}:{Column}: {Sentence}");
}
