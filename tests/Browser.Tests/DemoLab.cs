namespace Calx.Browser.Tests;

/// <summary>One lab over the demo's records for all tests that only look: a lesson half-way through, with its class and balances.</summary>
/// <param name="Lab">The lab.</param>
/// <param name="Live">Address of the lesson's live view.</param>
internal sealed record DemoLab(Lab Lab, string Live)
{
    /// <summary>Address of the lesson.</summary>
    public string Lesson => Live.Replace("/live", "", StringComparison.Ordinal);

    /// <summary>Opens it.</summary>
    public static async Task<DemoLab> Open(Chromium chromium)
    {
        string live = "";
        Lab lab = await Lab.Over(chromium, async folder => live = await DemoRecords.Write(folder));
        return new DemoLab(lab, live);
    }
}
