using Calx.Engine.Tests.Measurement.Expressions;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Tests;
using CsCheck;
using static Calx.Engine.Tests.Measurement.Expressions.ExpressionParserTests;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

public class PropagationTests
{
    // JCGM 101:2008, clause 9.4 (comparison loss), method GUF2: the first-order law with
    // the terms of next higher order, for 9.4 in units of 1e-6. The fourth digit is the column check_u of
    // jcgm101_results.csv, worked out there by formula; the standard prints 50, 112, 502, 67, 121 (or 120), 505.
    [Theory]
    [InlineData(0, 0, 50)]
    [InlineData(0.010, 0, 111.8)]
    [InlineData(0.050, 0, 502.5)]
    [InlineData(0, 0.9, 67.27)]
    [InlineData(0.010, 0.9, 120.5)]
    [InlineData(0.050, 0.9, 504.5)]
    public void Second_order_agrees_with_JCGM_101_9_4_comparison_loss(double x1, double r, double u)
    {
        InputCorrelation[] correlations = r == 0 ? [] : [new("X1", "X2", r)];
        var model = new MeasurementModel(
            "Y", Read("X1^2 + X2^2"), [Normal("X1", x1, 0.005), Normal("X2", 0, 0.005)], correlations);
        Assert.Equal(u, 1e6 * SecondOrder.StandardUncertainty(model), 0.051);
    }

    // JCGM 101:2008, clause 9.3, methods GUF1 and GUF2 of its table 6.
    [Fact]
    public void First_and_second_order_agree_with_JCGM_101_9_3_mass_calibration()
    {
        var model = new MeasurementModel(
            "dm",
            Read("(m_Rc + dm_Rc) * (1 + (rho_a - 1.2) * (1 / rho_W - 1 / rho_R)) - 100000"),
            [
                Normal("m_Rc", 100000, 0.05), Normal("dm_Rc", 1.234, 0.02),
                new("rho_a", new RectangularInput(1.1, 1.3)), new("rho_W", new RectangularInput(7000, 9000)),
                new("rho_R", new RectangularInput(7950, 8050)),
            ],
            []);
        UncertainValue result = FirstOrder.Propagate(model);
        Assert.Equal(1.2340, result.Value, 0.00005);
        Assert.Equal(0.0539, result.StandardUncertainty, 0.00005);
        Assert.Equal(0.0750, SecondOrder.StandardUncertainty(model), 0.00005);
    }

    [Fact]
    public void A_product_of_two_has_the_closed_form_of_its_exact_variance()
    {
        // For independent X and Y: var(XY) = y²u² + x²v² + u²v², exactly.
        var model = new MeasurementModel("p", Read("x * y"), [Normal("x", 3, 0.4), Normal("y", 5, 0.7)], []);
        double exact = Math.Sqrt((5 * 0.4 * 5 * 0.4) + (3 * 0.7 * 3 * 0.7) + (0.4 * 0.7 * 0.4 * 0.7));
        Assert.Equal(exact, SecondOrder.StandardUncertainty(model), 1e-12);
    }

    [Fact]
    public void A_cube_has_the_terms_of_its_third_derivative()
    {
        // x³ at x, u: 9x⁴u² + ½(6x)²u⁴ + (3x²)(6)u⁴ = 9x⁴u² + 36x²u⁴ (JCGM 100:2008, 5.1.2 NOTE).
        var model = new MeasurementModel("c", Read("x^3"), [Normal("x", 2, 0.5)], []);
        Assert.Equal(Math.Sqrt((9 * 16 * 0.25) + (36 * 4 * 0.0625)), SecondOrder.StandardUncertainty(model), 1e-12);
    }

    [Fact]
    public void First_order_is_what_symbolic_derivatives_give()
        => Gen.Select(RandomExpressions.Tame, Gen.Double[0.5, 2].Array[3]).Always((tree, point) =>
        {
            string[] names = RandomExpressions.Names;
            ModelInput[] inputs = [.. names.Select((name, i) => Normal(name, point[i], 0.01 * (i + 1)))];
            UncertainValue y = FirstOrder.Propagate(new MeasurementModel("y", tree, inputs, [], RandomExpressions.MolarMass));
            foreach (BudgetEntry entry in y.Budget)
            {
                double symbolic = tree.Derivative(entry.Input.Name).Evaluate(ExpressionTests.At(point), RandomExpressions.MolarMass);
                Assert.Equal(symbolic, entry.Sensitivity, 1e-10 * (1 + Math.Abs(symbolic)));
            }
        });

    [Fact]
    public void Values_derivatives_and_correlated_uncertainty_agree_with_Python_uncertainties()
    {
        double[,] r = { { 1, 0.6, 0 }, { 0.6, 1, -0.3 }, { 0, -0.3, 1 } };
        foreach (ReferenceRow row in ReferenceTable.Read("computed/uncertain_formulas.csv").Rows)
        {
            Expression formula = Read(row.Text("formula"));
            UncertainInput[] inputs =
                [.. RandomExpressions.Names.Select(name => new UncertainInput(name, row.Number(name), row.Number("u" + name)))];
            UncertainValue y = Value(formula, [.. inputs.Select(UncertainValue.Of)]);
            Agree.Relative(1e-12, row.Number("value"), y.Value);
            Agree.Relative(1e-10, row.Number("u"), y.StandardUncertainty);
            foreach (UncertainInput input in inputs)
            {
                double derivative = row.Number("by_" + input.Name);
                Agree.Within(1e-10 * (1e-3 + Math.Abs(derivative)), derivative, y.SensitivityTo(input));
            }

            UncertainValue correlated = Value(formula, UncertainValue.Correlated(inputs, r));
            Agree.Relative(1e-8, row.Number("correlated_u"), correlated.StandardUncertainty);
        }
    }

    [Fact]
    public void A_t_input_counts_with_its_scale_and_degrees_of_freedom()
    {
        var model = new MeasurementModel("y", Read("2 * x"), [new("x", new StudentTInput(5, 0.3, 4))], []);
        UncertainValue y = FirstOrder.Propagate(model);
        Assert.Equal(0.6, y.StandardUncertainty, 1e-15);
        Assert.Equal(4, y.DegreesOfFreedom, 1e-12);
        Assert.Equal(0.6, SecondOrder.StandardUncertainty(model), 1e-15);
    }

    [Theory]
    [InlineData("abs(x)", "abs has no derivative where its argument is 0, in 'abs(x)'")]
    [InlineData("max(x, y)", "max has no derivative where its arguments are equal (0), in 'max(x, y)'")]
    public void At_a_corner_both_orders_say_that_there_is_no_derivative(string formula, string firstOrder)
    {
        var model = new MeasurementModel("z", Read(formula), [Normal("x", 0, 0.1), Normal("y", 0, 0.1)], []);
        Assert.Equal(firstOrder, Assert.Throws<UndefinedResultException>(() => FirstOrder.Propagate(model)).Message);
        string second = Assert.Throws<UndefinedResultException>(() => SecondOrder.StandardUncertainty(model)).Message;
        Assert.StartsWith(
            "the model's derivative by x has no value at the estimates of its inputs: division by zero", second, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_higher_orders_outweigh_the_first_the_second_order_has_no_answer()
    {
        // x - x³ at 0 with u = 1 has variance 1 - 6 in the NOTE's equation.
        var model = new MeasurementModel("y", Read("x - x^3"), [Normal("x", 0, 1)], []);
        Assert.Contains(
            "variance would be negative",
            Assert.Throws<UndefinedResultException>(() => SecondOrder.StandardUncertainty(model)).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mas1 / 2", "mass1", "mas1 is not among the inputs (mass1, other); did you mean mass1?", 0, 4)]
    [InlineData("1 + q", "mass1", "q is not among the inputs (mass1, other)", 4, 1)]
    [InlineData("mass1 / M(MgO)", "mass1", "the molar mass of MgO is asked for and none can be supplied", 8, 6)]
    [InlineData("mass1", "other", "the input other is given twice", 0, 0)]
    public void A_model_that_a_person_wrote_wrongly_is_told_why(
        string formula, string input, string reason, int start, int length)
    {
        TextFault? fault = MeasurementModel.FaultOf(
            Read(formula), [Normal(input, 1, 0.1), Normal("other", 1, 0.1)], [], hasMolarMasses: false);
        Assert.Equal(reason, fault?.ToString());
        Assert.Equal(new SourceSpan(start, length), fault?.Span);
    }

    [Theory]
    [InlineData("a", "d", 0.5, "a correlation names d, which is not among the inputs")]
    [InlineData("b", "a", 0.5, "the correlation of b and a is given twice")]
    [InlineData("b", "c", -0.9, "the correlations contradict each other: no quantities can have them (the matrix has a negative eigenvalue)")]
    public void Correlations_that_cannot_be_are_told(string first, string second, double r, string reason)
    {
        ModelInput[] inputs = [Normal("a", 1, 0.1), Normal("b", 1, 0.1), Normal("c", 1, 0.1)];
        InputCorrelation[] correlations = [new("a", "b", 0.9), new("a", "c", 0.9), new(first, second, r)];
        Assert.Equal(reason, MeasurementModel.FaultOf(Read("a"), inputs, correlations)?.Reason);
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => new MeasurementModel("y", Read("a"), inputs, correlations));
        Assert.Equal(reason, refused.Message);
    }

    private static ModelInput Normal(string name, double mean, double u) => new(name, new NormalInput(mean, u));

    private static UncertainValue Value(Expression formula, IReadOnlyList<UncertainValue> values)
        => formula.Evaluate(name => values[Array.IndexOf(RandomExpressions.Names, name)], _ => UncertainValue.Exact(1));
}
