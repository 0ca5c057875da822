using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Calx.App.Input;

/// <summary>Options that take a number, with their range and our own wording of a fault.</summary>
internal static class NumberOption
{
    /// <summary>An option that takes a whole number within bounds.</summary>
    public static Option<long?> Whole(string name, string description, long least, long most)
    {
        return new Option<long?>(name)
        {
            Description = description,
            HelpName = "N",
            CustomParser = result => Parse(result, name, least, most),
        };
    }

    /// <summary>An option that takes a number strictly between bounds.</summary>
    public static Option<double?> Between(string name, string description, string helpName, double above, double below)
    {
        return new Option<double?>(name)
        {
            Description = description,
            HelpName = helpName,
            CustomParser = result => Parse(result, name, above, below),
        };
    }

    /// <summary>An option that takes a number from one bound to another, both included.</summary>
    public static Option<double?> FromTo(string name, string description, string helpName, double least, double most)
    {
        return new Option<double?>(name)
        {
            Description = description,
            HelpName = helpName,
            CustomParser = result =>
            {
                string text = result.Tokens[0].Value;
                if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number >= least && number <= most)
                {
                    return number;
                }

                result.AddError(string.Create(
                    CultureInfo.InvariantCulture, $"{name}: '{text}' is not a number from {least:0.#########} to {most:0.#########}{CommaHint(text)}"));
                return null;
            },
        };
    }

    /// <summary>What to say of a number with a decimal comma; empty for any other text.</summary>
    public static string CommaHint(string text)
    {
        string stop = text.Replace(',', '.');
        return text.Contains(',', StringComparison.Ordinal) && double.TryParse(stop, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? $"; write a full stop, {stop}"
            : "";
    }

    private static long? Parse(ArgumentResult result, string name, long least, long most)
    {
        string text = result.Tokens[0].Value;
        if (long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number)
            && number >= least && number <= most)
        {
            return number;
        }

        result.AddError(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: '{text}' is not a whole number from {least} to {most}"));
        return null;
    }

    private static double? Parse(ArgumentResult result, string name, double above, double below)
    {
        string text = result.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            && number > above && number < below)
        {
            return number;
        }

        string range = double.IsFinite(below)
            ? string.Create(CultureInfo.InvariantCulture, $"between {above:0.#########} and {below:0.#########}")
            : string.Create(CultureInfo.InvariantCulture, $"above {above:0.#########}");
        result.AddError($"{name}: '{text}' is not a number {range}{CommaHint(text)}");
        return null;
    }
}
