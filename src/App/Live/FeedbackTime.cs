namespace Calx.App.Live;

/// <summary>When students see what is said of their answers.</summary>
public enum FeedbackTime
{
    /// <summary>As soon as an answer is sent.</summary>
    AtOnce,

    /// <summary>When the teacher says so.</summary>
    Later,

    /// <summary>Not on their pages.</summary>
    Never,
}
