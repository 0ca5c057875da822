using System.Text.Json;

namespace Calx.App.Tests.Commands;

public sealed class PropagateCommandTests
{
    // JCGM 101:2008, 9.3: inputs in tests/reference/jcgm101_inputs.csv.
    private const string MassCalibration = """
        result: dm
        model: (mRc + dmRc) * (1 + (a - 1.2) * (1 / w - 1 / r)) - 100000
        inputs:
          mRc: {normal: [100000, 0.05]}
          dmRc: {normal: [1.234, 0.02]}
          a: {rectangular: [1.1, 1.3]}
          w: {rectangular: [7000, 9000]}
          r: {rectangular: [7950, 8050]}
        """;

    // Published: first order 1.2340, 0.0539, [1.1285, 1.3395]; with second order 0.0750; draws 0.0754,
    // [1.0834, 1.3825]. The published draws are themselves a run: by quadrature the standard deviation is 0.075480 and
    // the shortest interval 0.29913 wide, its ends uncertain by 0.005 from run to run.
    [Fact]
    public void Mass_calibration_of_JCGM_101_agrees_with_the_published_figures()
    {
        JsonElement answer = Json(MassCalibration, "--draws", "200000");

        JsonElement first = answer.GetProperty("firstOrder");
        Assert.Equal(1.2340, Number(first, "value"), 4);
        Assert.Equal(0.0539, Number(first, "standardUncertainty"), 4);
        AssertInterval(1.1285, 1.3395, first.GetProperty("interval"), 0.0001);
        Assert.Equal(0.0750, Number(answer.GetProperty("secondOrder"), "standardUncertainty"), 4);
        JsonElement drawn = answer.GetProperty("monteCarlo");
        Assert.Equal(1.234, Number(drawn, "value"), 0.001);
        Assert.Equal(0.07548, Number(drawn, "standardUncertainty"), 0.0006);
        AssertInterval(1.0834, 1.3825, drawn.GetProperty("shortest"), 0.005);
        Assert.Equal(200000, drawn.GetProperty("draws").GetInt32());
        Assert.False(answer.GetProperty("validated").GetBoolean());
    }

    // JCGM 100:2008, H.1 (tests/reference/gum_h1.csv): 32 nm with 16 degrees of freedom (16.7 before they are cut to a
    // whole number: from memory), 34 nm with the second order. A law 't' of a given scale has that scale as its standard uncertainty.
    [Fact]
    public void End_gauge_of_the_GUM_has_its_degrees_of_freedom()
    {
        JsonElement answer = Json("""
            result: length
            model: ls + d - ls * (da * theta + alpha * dtheta)
            inputs:
              ls: {t: [50000623, 25, 18]}
              d: {t: [215, 9.7, 25.6]}
              alpha: {normal: [1.15e-5, 1.2e-6]}
              theta: {normal: [-0.1, 0.41]}
              da: {t: [0, 5.8e-7, 50]}
              dtheta: {t: [0, 0.029, 2]}
            """, "--draws", "20000", "--coverage", "0.99");

        JsonElement first = answer.GetProperty("firstOrder");
        Assert.Equal(50000838, Number(first, "value"), 0);
        Assert.Equal(31.71, Number(first, "standardUncertainty"), 2);
        Assert.Equal(16.7, Number(first, "degreesOfFreedom"), 0.05);
        Assert.Equal(0.99, Number(first, "coverage"));
        // Student's t for 99 %: 2.921 at 16 degrees of freedom, 2.898 at 17 (tables of Student's t).
        Assert.InRange(Number(first, "coverageFactor"), 2.898, 2.921);
        Assert.Equal(33.91, Number(answer.GetProperty("secondOrder"), "standardUncertainty"), 0.05);
        JsonElement ls = Budget(first, "ls");
        Assert.Equal(25, Number(ls, "contribution"), 1);
        Assert.Equal(1, Number(ls, "sensitivity"), 4);
        Assert.Equal(16.6, Number(Budget(first, "dtheta"), "contribution"), 0.1);
    }

    // JCGM 100:2008, H.2 (tests/reference/gum_h2_results.csv): impedance 254.26 ohm, 0.236 with the correlations.
    [Fact]
    public void Correlations_of_the_GUM_s_impedance_count()
    {
        JsonElement answer = Json("""
            model: V / (I / 1000)
            inputs:
              V: {normal: [4.999, 0.003209]}
              I: {normal: [19.661, 0.009471]}
            correlations:
              - [V, I, -0.3553]
            """, "--draws", "20000");

        JsonElement first = answer.GetProperty("firstOrder");
        Assert.Equal(254.26, Number(first, "value"), 2);
        Assert.Equal(0.236, Number(first, "standardUncertainty"), 3);
        Assert.Equal(JsonValueKind.Null, first.GetProperty("degreesOfFreedom").ValueKind);
    }

    // QUAM:2012, A1 (tests/reference/quam_a1.csv): 1002.7 mg/L, 0.8352 from inputs that are not rounded.
    [Fact]
    public void Cadmium_standard_of_QUAM_agrees()
    {
        JsonElement answer = Json("""
            model: 1000 * m * P / (V + repeat + warm)
            inputs:
              m: {normal: [100.28, 0.05]}
              P: {rectangular: [0.9998, 1.0000]}
              V: {triangular: [99.9, 100, 100.1]}
              repeat: {normal: [0, 0.02]}
              warm: {rectangular: [-0.084, 0.084]}
            """, "--draws", "20000");

        Assert.Equal(1002.69972, Number(answer.GetProperty("firstOrder"), "value"), 5);
        Assert.Equal(0.835199, Number(answer.GetProperty("firstOrder"), "standardUncertainty"), 6);
    }

    // JCGM 101:2008, 9.2.3: four equal rectangles, 95 % within ±3.88 though first order says ±3.92.
    [Fact]
    public void A_higher_coverage_gives_the_wider_interval()
    {
        const string Model = """
            model: a + b + c + d
            inputs:
              a: {rectangular: [-1.7320508, 1.7320508]}
              b: {rectangular: [-1.7320508, 1.7320508]}
              c: {rectangular: [-1.7320508, 1.7320508]}
              d: {rectangular: [-1.7320508, 1.7320508]}
            """;

        AssertInterval(-3.88, 3.88, Json(Model, "--draws", "200000").GetProperty("monteCarlo").GetProperty("symmetric"), 0.03);
        JsonElement first = Json(Model, "--draws", "20000", "--coverage", "0.99").GetProperty("firstOrder");
        Assert.Equal(2.5758, Number(first, "coverageFactor"), 4);   // the normal's 99.5 % point, from tables
        AssertInterval(-5.1517, 5.1517, first.GetProperty("interval"), 0.0002);
    }

    [Fact]
    public void The_number_of_threads_changes_no_byte_and_another_seed_does()
    {
        string one = Run(MassCalibration, "--json", "--draws", "50000", "--threads", "1").Output;

        Assert.Equal(one, Run(MassCalibration, "--json", "--draws", "50000", "--threads", "4").Output);
        Assert.NotEqual(one, Run(MassCalibration, "--json", "--draws", "50000", "--threads", "1", "--seed", "2").Output);
    }

    [Theory]
    [InlineData("model: m / v\ninputs:\n  m: {normal: [1, 0.1]}\n  v: {normall: [2, 0.1]}\n", "model.yaml:4:7: there is no law 'normall'")]
    [InlineData("model: m\ninputs:\n  m: {normal: [1, 0.1]}\nimputs: 3\n", "model.yaml:4:1: 'imputs' is no key of a model")]
    [InlineData("inputs:\n  m: {normal: [1, 0.1]}\n", "model.yaml:1:1: there is no 'model'")]
    [InlineData("model: m\n", "model.yaml:1:1: there is no 'inputs'")]
    [InlineData("model: m + q\ninputs:\n  m: {normal: [1, 0.1]}\n", "model.yaml:1:12: ")]
    [InlineData("model: m +\ninputs:\n  m: {normal: [1, 0.1]}\n", "model.yaml:1:")]
    [InlineData("model: M(Xq)*m\ninputs:\n  m: {normal: [1, 0.1]}\n", "model.yaml:1:10: ")]
    [InlineData("model: m\ninputs:\n  m: {normal: [one, 0.1]}\n", "model.yaml:3:15: normal takes [mean")]
    [InlineData("model: m\ninputs:\n  m: {normal: [1e400, 0.1]}\n", "model.yaml:3:15: normal takes")]
    [InlineData("model: m\ninputs:\n  m: {normal: [NaN, 0.1]}\n", "model.yaml:3:15: normal takes")]
    [InlineData("model: m\ninputs:\n  m: {normal: [1, -0.1]}\n", "model.yaml:3:15: normal: ")]
    [InlineData("model: m\ninputs:\n  m: {rectangular: [2, 1]}\n", "model.yaml:3:20: rectangular: ")]
    [InlineData("model: m\ninputs:\n  m: {normal: [1, 0.1, 5]}\n", "model.yaml:3:15: normal takes")]
    [InlineData("model: m\ninputs:\n  m: {normal: [1, 0.1]}\ncorrelations:\n  - [m, q, 0.5]\n", "model.yaml:")]
    [InlineData("model: m*n\ninputs:\n  m: {normal: [1, 0.1]}\n  n: {normal: [1, 0.1]}\ncorrelations:\n  - [m, n, 1.5]\n", "model.yaml:6:5: ")]
    [InlineData("model: [m\n", "model.yaml:")]
    [InlineData("- a\n- b\n", "model.yaml:1:1: expected keys")]
    [InlineData("model: &a m\ninputs: *a\n", "model.yaml:2:9: *a: references are not used here")]
    [InlineData("", "model.yaml:1:1: the file is empty")]
    [InlineData("model: m\0\n", "model.yaml:1:1: the file is not text")]
    public void A_faulty_model_is_told_with_its_place(string model, string start)
    {
        Terminal run = Run(model, "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(start, run.Error, StringComparison.Ordinal);
        Assert.All(run.Error.TrimEnd('\n').Split('\n'), line => Assert.StartsWith("model.yaml:", line, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_nested_without_end_is_refused()
    {
        Terminal run = Run("model: " + new string('[', 100_000), "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("model.yaml:1:", run.Error, StringComparison.Ordinal);
        Assert.True(run.Error.Length < 300);
    }

    [Fact]
    public void A_model_that_divides_by_zero_has_a_reason_in_place_of_a_result()
    {
        Terminal run = Run("model: 1 / z\ninputs:\n  z: {rectangular: [0, 0]}\n", "--json", "--draws", "1000");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));

        run = Run("model: ln(z)\ninputs:\n  z: {normal: [-5, 0.1]}\n", "--json", "--draws", "1000");
        JsonElement answer = Schemas.Check("propagation", run.Output);
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("firstOrder").ValueKind);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("monteCarlo").ValueKind);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("validated").ValueKind);
        Assert.NotEmpty(answer.GetProperty("firstOrderReason").GetString()!);
        Assert.NotEmpty(answer.GetProperty("monteCarloReason").GetString()!);
    }

    // A sixth of these draws is below zero and has no logarithm; first order knows nothing of them: ln 0.1 = -2.3026,
    // and its derivative there is 10.
    [Fact]
    public void Draws_without_a_value_leave_the_first_order_result_standing_alone()
    {
        JsonElement answer = Json("model: ln(z)\ninputs:\n  z: {normal: [0.1, 0.1]}\n", "--draws", "10000");

        Assert.Equal(-2.3026, Number(answer.GetProperty("firstOrder"), "value"), 4);
        Assert.Equal(1, Number(answer.GetProperty("firstOrder"), "standardUncertainty"), 9);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("monteCarlo").ValueKind);
        Assert.NotEmpty(answer.GetProperty("monteCarloReason").GetString()!);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("validated").ValueKind);
    }

    [Theory]
    [InlineData("--coverage", "1")]
    [InlineData("--coverage", "NaN")]
    [InlineData("--draws", "0")]
    [InlineData("--draws", "many")]
    [InlineData("--draws", "99999999999999999999")]
    [InlineData("--seed", "-1")]
    [InlineData("--threads", "0")]
    public void An_option_out_of_range_is_told_with_its_range(string option, string value)
    {
        Terminal run = Run(MassCalibration, option, value);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"calx propagate: {option}: '{value}' is not a ", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("\nSee calx propagate --help.\n", run.Error, StringComparison.Ordinal);
    }

    private static Terminal Run(string model, params string[] options)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "model.yaml"), model);
        return Terminal.RunIn(folder.FullName, ["propagate", "model.yaml", .. options]);
    }

    private static JsonElement Json(string model, params string[] options)
    {
        Terminal run = Run(model, ["--json", .. options]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        return Schemas.Check("propagation", run.Output);
    }

    private static double Number(JsonElement element, string key) => element.GetProperty(key).GetDouble();

    private static JsonElement Budget(JsonElement first, string input) => Assert.Single(
        first.GetProperty("budget").EnumerateArray(), line => line.GetProperty("input").GetString() == input);

    private static void AssertInterval(double low, double high, JsonElement interval, double tolerance)
    {
        Assert.Equal(low, interval[0].GetDouble(), tolerance);
        Assert.Equal(high, interval[1].GetDouble(), tolerance);
    }
}
