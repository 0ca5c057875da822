namespace Calx.Practicals.Definition;

/// <summary>What a group can still do to learn more.</summary>
public enum ActionKind
{
    /// <summary>One more round of the repeated step, cooled and weighed.</summary>
    Reheat,

    /// <summary>Cool longer and weigh the same again.</summary>
    Reweigh,

    /// <summary>Look again at the display or the paper record of a reading.</summary>
    Reread,

    /// <summary>Look at what the balance shows with nothing on the pan.</summary>
    Zero,

    /// <summary>Weigh without one part.</summary>
    WithoutPart,

    /// <summary>Look for what an observation says.</summary>
    Look,
}
