using Calx.Measurement.Distributions;

namespace Calx.App.Input;

/// <summary>A law that an input of a model may follow: the words for its numbers, and how it is made.</summary>
internal sealed class InputLaw
{
    private InputLaw(string numbers, Func<double[], InputDistribution> make)
    {
        Numbers = numbers.Split(' ');
        Make = make;
    }

    /// <summary>The laws by the word in the file.</summary>
    public static IReadOnlyDictionary<string, InputLaw> Known { get; } = new Dictionary<string, InputLaw>(StringComparer.Ordinal)
    {
        ["normal"] = new("mean sd", n => new NormalInput(n[0], n[1])),
        ["rectangular"] = new("lo hi", n => new RectangularInput(n[0], n[1])),
        ["triangular"] = new("lo mode hi", n => new TriangularInput(n[0], n[1], n[2])),
        ["trapezoidal"] = new("a b c d", n => new TrapezoidalInput(n[0], n[1], n[2], n[3])),
        ["arcsine"] = new("lo hi", n => new ArcsineInput(n[0], n[1])),
        ["t"] = new("mean scale dof", n => new StudentTInput(n[0], n[1], n[2])),
        ["beta"] = new("alpha beta lo hi", n => new BetaInput(n[0], n[1], n[2], n[3])),
        ["exponential"] = new("mean", n => new ExponentialInput(n[0])),
        ["gamma"] = new("shape scale", n => new GammaInput(n[0], n[1])),
        ["curvilinear"] = new("lo hi d", n => new CurvilinearTrapezoidInput(n[0], n[1], n[2])),
    };

    /// <summary>What each number is.</summary>
    public string[] Numbers { get; }

    /// <summary>Makes the law of as many numbers; throws an argument exception where they do not fit.</summary>
    public Func<double[], InputDistribution> Make { get; }
}
