namespace Calx.Practicals.Texts;

/// <summary>Lists, counts and names as they stand within the sentences of a language.</summary>
internal sealed class Wording(EngineLanguage language)
{
    private readonly CommonTexts texts = new(language);

    /// <summary>The names, the last two joined by 'and'.</summary>
    public string And(IReadOnlyList<string> names) => Joined(names, texts.ListMore, texts.ListAnd);

    /// <summary>All of them joined by 'and'.</summary>
    public string AllAnd(IReadOnlyList<string> names) => Joined(names, texts.ListAnd, texts.ListAnd);

    /// <summary>The names, the last two joined by 'or'.</summary>
    public string Or(IReadOnlyList<string> names) => Joined(names, texts.ListMore, texts.ListOr);

    /// <summary>All of them joined by 'or'.</summary>
    public string AllOr(IReadOnlyList<string> names) => Joined(names, texts.ListOr, texts.ListOr);

    /// <summary>The names, the last two joined by 'nor'.</summary>
    public string Nor(IReadOnlyList<string> names) => Joined(names, texts.ListMore, texts.ListNor);

    /// <summary>The names with commas between them.</summary>
    public string List(IReadOnlyList<string> names) => Joined(names, texts.ListMore, texts.ListMore);

    /// <summary>Names that may have commas themselves.</summary>
    public string LongList(IReadOnlyList<string> names) => Joined(names, texts.LongListMore, texts.LongListMore);

    /// <summary>The same, the last two joined by 'or'.</summary>
    public string LongOr(IReadOnlyList<string> names) => Joined(names, texts.LongListMore, texts.LongListOr);

    /// <summary>The practical's name of something, marked as one.</summary>
    public string Quoted(string name) => texts.Quoted(name);

    /// <summary>A group's name, where a number alone would be taken for a quantity.</summary>
    public string Group(string name) => name.Split(',')[0].All(c => char.IsAsciiDigit(c) || c == ' ') ? texts.NumberedGroup(name) : name;

    /// <summary>A group's name with its trial.</summary>
    public string Trial(string group, string? trial) => trial is null ? group : texts.WithTrial(group, trial);

    /// <summary>A student without a name.</summary>
    public string Student(string number) => texts.UnnamedStudent(number);

    /// <summary>A number up to twelve in words, a larger one in figures.</summary>
    public string Count(int number) => number switch
    {
        0 => texts.CountNone,
        1 => texts.CountOne,
        2 => texts.CountTwo,
        3 => texts.CountThree,
        4 => texts.CountFour,
        5 => texts.CountFive,
        6 => texts.CountSix,
        7 => texts.CountSeven,
        8 => texts.CountEight,
        9 => texts.CountNine,
        10 => texts.CountTen,
        11 => texts.CountEleven,
        12 => texts.CountTwelve,
        _ => number.InFigures(),
    };

    /// <summary>The same at the beginning of a sentence.</summary>
    public string CountFirst(int number) => Capital(Count(number));

    /// <summary>How many decimals a balance shows.</summary>
    public string Decimals(int number) => number switch
    {
        0 => texts.NoDecimals,
        1 => texts.OneDecimal,
        2 => texts.TwoDecimals,
        3 => texts.ThreeDecimals,
        4 => texts.FourDecimals,
        5 => texts.FiveDecimals,
        _ => texts.ManyDecimals(number.InFigures()),
    };

    /// <summary>A probability in whole per cent, never 0 or 100 for what is not impossible or certain: '84 %', 'over 99 %'.</summary>
    public string Percent(double probability) => probability switch
    {
        > 0.99 => texts.OverNinetyNine,
        < 0.01 => texts.UnderOne,
        _ => texts.Percent((100 * probability).InFigures("F0")),
    };

    /// <summary>With a capital, as at the beginning of a sentence.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    /// <summary>Without one, as within a sentence.</summary>
    public static string Small(string text) => text.Length == 0 ? text : $"{char.ToLowerInvariant(text[0])}{text[1..]}";

    private static string Joined(IReadOnlyList<string> names, Func<string, string, string> more, Func<string, string, string> last) => names.Count switch
    {
        0 => string.Empty,
        1 => names[0],
        _ => last(names.Take(names.Count - 1).Aggregate(more), names[^1]),
    };
}
