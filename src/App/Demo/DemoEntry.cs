using Calx.Records.Journal;

namespace Calx.App.Demo;

/// <summary>An entry of the demo's lesson.</summary>
/// <param name="Minute">When it is typed.</param>
/// <param name="Cell">Where it belongs.</param>
/// <param name="Content">What is typed.</param>
/// <param name="Id">Its id.</param>
/// <param name="Device">Who types.</param>
public sealed record DemoEntry(double Minute, JournalCell Cell, EntryContent Content, EntryId Id, string Device);
