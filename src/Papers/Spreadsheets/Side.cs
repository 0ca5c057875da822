namespace Calx.Papers.Spreadsheets;

/// <summary>Where in its cell something stands.</summary>
internal enum Side
{
    /// <summary>Where the program puts it: texts on the left, numbers on the right.</summary>
    Usual,

    /// <summary>On the left.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Middle,

    /// <summary>On the right.</summary>
    Right,
}
