using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>Queues of the textbooks, run on the lesson's own simulation.</summary>
internal sealed class QueueRun
{
    private QueueRun(WorkSimulation simulation, List<WorkSpan> served, double end)
    {
        Use = simulation.Shared[0];
        Served = served;
        End = end;
    }

    /// <summary>The servers.</summary>
    public SharedUse Use { get; }

    /// <summary>Everyone served, in the order of being done.</summary>
    public IReadOnlyList<WorkSpan> Served { get; }

    /// <summary>When the last was done.</summary>
    public double End { get; }

    /// <summary>Customers who come one after another, are served once and go.</summary>
    /// <param name="customers">How many.</param>
    /// <param name="servers">How many serve.</param>
    /// <param name="between">Time from one arrival to the next.</param>
    /// <param name="service">Time of a service.</param>
    public static QueueRun Open(int customers, int servers, Func<double> between, Func<double> service)
    {
        double[] arrivals = new double[customers];
        double[] services = new double[customers];
        double now = 0;
        for (int i = 0; i < customers; i++)
        {
            arrivals[i] = now += between();
            services[i] = service();
        }

        int[] stage = new int[customers];
        return Run(customers, servers, (person, _) => stage[person]++ switch
        {
            0 => Activity.Work(arrivals[person]),
            1 => Activity.Work(services[person], need: 0),
            _ => Activity.Done,
        });
    }

    /// <summary>A fixed number of people who are served again and again, with time to themselves in between.</summary>
    public static QueueRun Closed(int people, int servers, int rounds, Func<double> alone, Func<double> service)
    {
        int[] stage = new int[people];
        return Run(people, servers, (person, _) =>
        {
            int at = stage[person]++;
            return at >= 2 * rounds ? Activity.Done : at % 2 == 0 ? Activity.Work(alone()) : Activity.Work(service(), need: 0);
        });
    }

    public static Func<double> Exponential(RandomStream random, double rate) => () => -Math.Log(random.NextDouble()) / rate;

    /// <summary>Mean and standard error of a figure of those served, from the means of 40 batches after the first tenth.</summary>
    public (double Mean, double Error) Mean(Func<WorkSpan, double> figure)
    {
        WorkSpan[] settled = [.. Served.Skip(Served.Count / 10)];
        double[] batches = [.. settled.Chunk((settled.Length + 39) / 40).Select(batch => batch.Average(figure))];
        double mean = batches.Average();
        double spread = Math.Sqrt(batches.Sum(b => (b - mean) * (b - mean)) / (batches.Length - 1));
        return (mean, spread / Math.Sqrt(batches.Length));
    }

    private static QueueRun Run(int people, int servers, NextActivity next)
    {
        var trace = new List<WorkSpan>();
        var simulation = new WorkSimulation([servers], [[new Need(0, 1)]], people) { Trace = trace };
        double end = simulation.Run(next);
        return new QueueRun(simulation, [.. trace.Where(span => span.Need == 0)], end);
    }
}
