using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Nonlinear;

namespace Calx.Engine.Tests.Measurement.Statistics.Nonlinear;

/// <summary>The models of the NIST nonlinear sets: formulas where our grammar has the functions, derivatives by hand where not.</summary>
internal static class CertifiedModels
{
    private const string TwoPeaks = "b1*exp(-b2*x)+b3*exp(-((x-b4)/b5)^2)+b6*exp(-((x-b7)/b8)^2)";
    private const string ThreeExponentials = "b1*exp(-b2*x)+b3*exp(-b4*x)+b5*exp(-b6*x)";
    private const string CubicOverCubic = "(b1+b2*x+b3*x^2+b4*x^3)/(1+b5*x+b6*x^2+b7*x^3)";

    private static readonly Dictionary<string, string> Formulas = new()
    {
        ["Misra1a"] = "b1*(1-exp(-b2*x))",
        ["Misra1b"] = "b1*(1-1/(1+b2*x/2)^2)",
        ["Misra1c"] = "b1*(1-1/sqrt(1+2*b2*x))",
        ["Misra1d"] = "b1*b2*x/(1+b2*x)",
        ["BoxBOD"] = "b1*(1-exp(-b2*x))",
        ["Chwirut1"] = "exp(-b1*x)/(b2+b3*x)",
        ["Chwirut2"] = "exp(-b1*x)/(b2+b3*x)",
        ["DanWood"] = "b1*x^b2",
        ["Lanczos1"] = ThreeExponentials,
        ["Lanczos2"] = ThreeExponentials,
        ["Lanczos3"] = ThreeExponentials,
        ["Gauss1"] = TwoPeaks,
        ["Gauss2"] = TwoPeaks,
        ["Gauss3"] = TwoPeaks,
        ["Kirby2"] = "(b1+b2*x+b3*x^2)/(1+b4*x+b5*x^2)",
        ["Hahn1"] = CubicOverCubic,
        ["MGH17"] = "b1+b2*exp(-x*b4)+b3*exp(-x*b5)",
        ["MGH09"] = "b1*(x^2+x*b2)/(x^2+x*b3+b4)",
        ["MGH10"] = "b1*exp(b2/(x+b3))",
        ["Nelson"] = "b1-b2*x1*exp(-b3*x2)",
        ["Rat42"] = "b1/(1+exp(b2-b3*x))",
        ["Rat43"] = "b1/(1+exp(b2-b3*x))^(1/b4)",
        ["Thurber"] = CubicOverCubic,
        ["Eckerle4"] = "b1/b2*exp(-0.5*((x-b3)/b2)^2)",
        ["Bennett5"] = "b1*(b2+x)^(-1/b3)",
    };

    public static NonlinearProblem Problem(string set, string start)
    {
        ReferenceTable data = ReferenceTable.Read($"nist_nonlinear_{(set.StartsWith("Misra", StringComparison.Ordinal) ? "Misra1" : set)}.csv");
        ReferenceRow[] certified = Certified(set);
        double[] first = [.. certified.Where(row => row.Text("quantity")[0] == 'b').Select(row => row.Number(start))];
        double[] y = data.Column("y");
        return new NonlinearProblem(Model(set, data, first.Length), set == "Nelson" ? Array.ConvertAll(y, Math.Log) : y, first);
    }

    public static ReferenceRow[] Certified(string set) =>
        [.. ReferenceTable.Read("nist_nonlinear_certified.csv").Rows.Where(row => row.Text("dataset") == set)];

    private static INonlinearModel Model(string set, ReferenceTable data, int count)
    {
        if (set is "ENSO" or "Roszman1")
        {
            return new HandMade(data.Column("x"), count, set == "ENSO" ? Enso : Roszman);
        }

        Parsed<Expression> formula = Expression.Parse(Formulas[set]);
        string[] names = [.. Enumerable.Range(1, count).Select(k => $"b{k}")];
        string[] places = set == "Nelson" ? ["x1", "x2"] : ["x"];
        return new FormulaModel(formula.Value, names, places.ToDictionary(name => name, data.Column));
    }

    private static double Enso(double x, ReadOnlySpan<double> b, Span<double> d)
    {
        double Angle(double period) => 2 * Math.PI * x / period;
        d[0] = 1;
        (d[2], d[1]) = Math.SinCos(Angle(12));
        (d[5], d[4]) = Math.SinCos(Angle(b[3]));
        (d[8], d[7]) = Math.SinCos(Angle(b[6]));
        d[3] = ((b[4] * d[5]) - (b[5] * d[4])) * Angle(b[3]) / b[3];
        d[6] = ((b[7] * d[8]) - (b[8] * d[7])) * Angle(b[6]) / b[6];
        return b[0] + (b[1] * d[1]) + (b[2] * d[2]) + (b[4] * d[4]) + (b[5] * d[5]) + (b[7] * d[7]) + (b[8] * d[8]);
    }

    private static double Roszman(double x, ReadOnlySpan<double> b, Span<double> d)
    {
        double away = x - b[3];
        double squares = ((away * away) + (b[2] * b[2])) * Math.PI;
        (d[0], d[1], d[2], d[3]) = (1, -x, -away / squares, -b[2] / squares);
        return b[0] - (b[1] * x) - (Math.Atan(b[2] / away) / Math.PI);
    }

    private delegate double Curve(double x, ReadOnlySpan<double> parameters, Span<double> derivatives);

    private sealed class HandMade(double[] x, int count, Curve curve) : INonlinearModel
    {
        public IReadOnlyList<string> Parameters { get; } = [.. Enumerable.Range(1, count).Select(k => $"b{k}")];

        public int Points => x.Length;

        public bool TryEvaluate(ReadOnlySpan<double> parameters, Span<double> values, Span<double> derivatives)
        {
            var here = new double[count];
            for (int i = 0; i < x.Length; i++)
            {
                values[i] = curve(x[i], parameters, here);
                for (int k = 0; k < count && derivatives.Length > 0; k++)
                {
                    derivatives[(k * x.Length) + i] = here[k];
                }
            }

            return true;
        }
    }
}
