namespace Calx.App.Output;

/// <summary>Sentences on a terminal, broken between words.</summary>
internal static class WrappedText
{
    private const int Width = 88;

    /// <summary>Prints a text.</summary>
    /// <param name="output">Where.</param>
    /// <param name="text">The text.</param>
    /// <param name="first">What stands before its first line.</param>
    /// <param name="then">What stands before every further line.</param>
    public static void Write(TextWriter output, string text, string first, string then)
    {
        string line = first;
        bool empty = true;
        foreach (string word in text.Split(' '))
        {
            if (!empty && TextWidth.Of(line) + 1 + TextWidth.Of(word) > Width)
            {
                output.WriteLine(line);
                line = then;
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        output.WriteLine(line);
    }

    /// <summary>Prints a heading after a blank line.</summary>
    public static void Heading(TextWriter output, string text)
    {
        output.WriteLine();
        output.WriteLine(text);
    }
}
