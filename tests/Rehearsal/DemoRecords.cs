using Calx.App.Demo;
using Calx.App.Serving;
using Calx.Records.Storage;

namespace Calx.Rehearsal;

/// <summary>The records of the demo's invented school: a lesson half-way through, two earlier years, balances with checks.</summary>
public static class DemoRecords
{
    /// <summary>Writes them into an empty data folder and returns the address of the live view.</summary>
    public static async Task<string> Write(string dataFolder)
    {
        var clock = new ShiftedClock();
        await using RecordStore store = await RecordStore.Open(new StoreSettings(new ServeOptions(dataFolder).Connection), clock);
        return await new DemoLesson(store, clock).Write(CancellationToken.None);
    }
}
