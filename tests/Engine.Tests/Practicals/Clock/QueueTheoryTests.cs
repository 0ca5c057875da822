using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>The simulation against queues whose waiting times have closed forms. A wait is held to 4.5 standard errors, which a
/// right simulation passes but seven times in a million, and the error itself to a few per cent, so that a wrong one fails.</summary>
public sealed class QueueTheoryTests
{
    private static int Customers => LongProofs.Cases(60_000, 600_000);

    /// <summary>Worked examples of F. S. Hillier and G. J. Lieberman, D. Gross and C. M. Harris (values from memory, recomputed as
    /// exact fractions), and two from the manual of the R package queueing.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Textbook_queues_wait_as_the_textbooks_say(int row)
    {
        ReferenceRow example = ReferenceTable.Read("queue_mmc_examples.csv").Rows[row];
        double arrivals = Fraction(example.Text("lambda"));
        double services = Fraction(example.Text("mu"));
        var random = new RandomStream(41, (ulong)row);
        QueueRun run = QueueRun.Open(
            Customers, (int)Fraction(example.Text("c")), QueueRun.Exponential(random, arrivals), QueueRun.Exponential(random, services));
        Agrees(Fraction(example.Text("Wq")), run.Mean(Wait), 0.12);
        Agrees(Fraction(example.Text("p_wait")), run.Mean(HadToWait), 0.06);
        Agrees(Fraction(example.Text("W")), run.Mean(s => s.Ended - s.Asked), 0.06);
    }

    /// <summary>Erlang C, the closed form of M/M/c, on a grid of servers and loads (computed in exact fractions).</summary>
    [Fact]
    public void Waits_on_a_grid_of_loads_are_those_of_Erlang_C()
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("queue_erlang_c_table.csv").Rows
            // Where hardly anybody waits, a run of this length sees too few waits to judge.
            .Where(r => Fraction(r.Text("rho")) is 0.5 or 0.7 or 0.8 && Fraction(r.Text("p_wait")) > 0.05)];
        Assert.True(rows.Length >= 12);
        foreach (ReferenceRow row in rows)
        {
            double load = Fraction(row.Text("offered_load"));
            var random = new RandomStream(42, (ulong)(load * 1000));
            QueueRun run = QueueRun.Open(
                Customers / 2, (int)Fraction(row.Text("c")), QueueRun.Exponential(random, load), QueueRun.Exponential(random, 1));
            Agrees(Fraction(row.Text("p_wait")), run.Mean(HadToWait), 0.25);
            Agrees(Fraction(row.Text("Wq_times_mu")), run.Mean(Wait), 0.35);
        }
    }

    /// <summary>Fixed service times: by the formula of Pollaczek and Khinchine the wait is rho / (2 mu (1 - rho)).</summary>
    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(0.8, 2.0)]
    public void Fixed_services_wait_half_as_long(double load, double wait)
    {
        QueueRun run = QueueRun.Open(Customers, 1, QueueRun.Exponential(new RandomStream(43, 1), load), () => 1);
        Agrees(wait, run.Mean(Wait), 0.05);
    }

    /// <summary>Few people who come back again and again: the machine-repair model (W. L. Winston, from memory; others
    /// computed exactly, among them 24 pupils at one and at two balances).</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_class_at_its_balances_waits_as_the_finite_source_model_says(int row)
    {
        ReferenceRow example = ReferenceTable.Read("queue_finite_source.csv").Rows[row];
        int people = (int)Fraction(example.Text("K"));
        int servers = (int)Fraction(example.Text("R"));
        var random = new RandomStream(44, (ulong)row);
        QueueRun run = QueueRun.Closed(
            people, servers, Customers / people, QueueRun.Exponential(random, Fraction(example.Text("lambda"))), QueueRun.Exponential(random, Fraction(example.Text("mu"))));
        Agrees(Fraction(example.Text("Wq")), run.Mean(Wait), 0.15);
        Agrees(Fraction(example.Text("W")), run.Mean(s => s.Ended - s.Asked), 0.05);
        // At the end people leave one by one and servers stand idle for that: the middle of the run counts.
        (double from, double to) = (0.1 * run.End, 0.9 * run.End);
        double busy = run.Served.Sum(s => Math.Max(0, Math.Min(s.Ended, to) - Math.Max(s.Began, from)));
        Assert.Equal(Fraction(example.Text("idle")), 1 - (busy / (servers * (to - from))), 0.012);
    }

    [Theory]
    [InlineData(1, 0.6)]
    [InlineData(2, 1.7)]
    [InlineData(4, 3.9)]
    public void Little_s_law_holds_in_every_run(int servers, double load)
    {
        var random = new RandomStream(45, (ulong)servers);
        QueueRun run = QueueRun.Open(5000, servers, QueueRun.Exponential(random, load), QueueRun.Exponential(random, 1));
        // Number waiting times minutes, counted at every change, and waits added up one by one: one thing in two ways.
        Assert.Equal(run.Use.QueueMinutes, run.Use.WaitedMinutes, 1e-9 * run.Use.WaitedMinutes);
        Assert.Equal(run.Served.Sum(Wait), run.Use.WaitedMinutes, 1e-9 * run.Use.WaitedMinutes);
        Assert.Equal(5000, run.Use.Visits);
        Assert.InRange(run.Use.MostInUse, 1, servers);
    }

    private static double Wait(WorkSpan span) => span.Began - span.Asked;

    private static double HadToWait(WorkSpan span) => span.Began > span.Asked + 1e-9 ? 1 : 0;

    private static void Agrees(double closedForm, (double Mean, double Error) simulated, double largestRelativeError)
    {
        Assert.True(
            Math.Abs(simulated.Mean - closedForm) < 4.5 * simulated.Error,
            FormattableString.Invariant($"{simulated.Mean} ± {simulated.Error}, closed form {closedForm}"));
        Assert.True(simulated.Error < largestRelativeError * closedForm, FormattableString.Invariant($"error {simulated.Error} of {closedForm}"));
    }

    private static double Fraction(string text)
    {
        string[] parts = text.Split('/');
        double first = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? first : first / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
