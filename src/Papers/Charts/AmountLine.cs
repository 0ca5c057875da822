using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Papers.Charts;

/// <summary>A line of the chart of amounts, with its name at its right end.</summary>
internal sealed class AmountLine
{
    private const double LineHeight = 17;
    private const double BetweenNames = 5;

    /// <summary>From the ends of the lines to their names.</summary>
    private const double Gap = 22;

    /// <summary>The names of the marks stand over the plot and may reach this far to the right: the names of the lines keep below.</summary>
    private const double ClearOfMarks = 4;

    /// <summary>Roles of colours that conclusions take in turn.</summary>
    private const int Colours = 4;

    /// <summary>With more conclusions than this their names get fewer lines.</summary>
    private const int MostLong = 2;

    private readonly string name;
    private readonly string role;
    private readonly bool isClass;
    private readonly IReadOnlyList<(double Grams, double Percent)> points;

    private AmountLine(string name, string role, bool isClass, IEnumerable<(double, double)> points)
    {
        this.name = name;
        this.role = role;
        this.isClass = isClass;
        this.points = [.. points];
    }

    /// <summary>For each conclusion the class and one group, and the probability that the class is led astray. A class
    /// of one group has one line for both.</summary>
    public static IReadOnlyList<AmountLine> All(AmountAdvice amounts, int groups, ChartTexts texts)
    {
        var all = new List<AmountLine>();
        for (int i = 0; i < amounts.Curve[0].Chances.Count; i++)
        {
            int number = i;
            string label = amounts.Curve[0].Chances[i].Conclusion.Label;
            string colour = string.Create(CultureInfo.InvariantCulture, $"line-{i % Colours}");
            all.Add(new AmountLine(groups > 1 ? texts.ClassLine(label) : label, $"of-class {colour}", true, Of(p => p.Chances[number].ClassRight.Value)));
            if (groups > 1)
            {
                all.Add(new AmountLine(texts.GroupLine(label), $"of-group {colour}", false, Of(p => p.Chances[number].GroupRight.Value)));
            }
        }

        all.Add(new AmountLine(groups > 1 ? texts.ClassWrongLine : texts.WrongLine, "wrong", false, Of(p => p.ClassWrong)));
        return all;

        IEnumerable<(double, double)> Of(Func<AmountPoint, double> probability) =>
            amounts.Curve.Select(p => (p.SampleInGrams, 100 * probability(p)));
    }

    /// <summary>Draws the line; the class's with a point at each amount that was looked at.</summary>
    public void Draw(SvgPicture picture, Axis across, Axis upwards)
    {
        (double X, double Y)[] places = [.. points.Select(p => (across.At(p.Grams), upwards.At(p.Percent)))];
        picture.Path(places, role);
        foreach ((double x, double y) in isClass ? places : [])
        {
            picture.Circle(x, y, 3.2, role.Replace("of-class", "point", StringComparison.Ordinal));
        }
    }

    /// <summary>Writes the names of all lines, moved apart, each joined to its line.</summary>
    public static void WriteNames(SvgPicture picture, IReadOnlyList<AmountLine> lines, Frame frame, Axis upwards, double width)
    {
        double left = frame.Right + Gap;
        int most = lines.Count <= (2 * MostLong) + 1 ? 3 : 2;
        IReadOnlyList<string>[] texts = [.. lines.Select(l => TextWidth.Broken(l.name, width - left, most))];
        double[] heights = [.. texts.Select(t => (t.Count * LineHeight) + BetweenNames)];
        double[] ends = [.. lines.Select(l => upwards.At(l.points[^1].Percent))];
        double[] places = LabelColumn.Spread(ends, heights, frame.Top + ClearOfMarks, frame.Bottom + LineHeight);
        for (int i = 0; i < lines.Count; i++)
        {
            picture.Line(frame.Right + 2, ends[i], left - 4, places[i], "leader");
            string named = lines[i].role == "wrong" ? "odd-label" : lines[i].role;
            for (int line = 0; line < texts[i].Count; line++)
            {
                picture.Text(left, places[i] + (LineHeight * (line - ((texts[i].Count - 1) / 2.0))) + 5, texts[i][line], named);
            }
        }
    }
}
