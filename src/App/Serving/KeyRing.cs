using System.Xml.Linq;
using Calx.Records.Storage;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Calx.App.Serving;

/// <summary>The keys that seal cookies, kept with the records: a restart keeps everybody's seat, and several programs on one
/// database know each other's.</summary>
public sealed class KeyRing(RecordStore store) : IXmlRepository
{
    // The interface is older than asynchronous calls; it is asked once at the start and once in three months.
    public IReadOnlyCollection<XElement> GetAllElements() =>
        [.. store.KeyElements(CancellationToken.None).GetAwaiter().GetResult().Select(text => XElement.Parse(text))];

    public void StoreElement(XElement element, string friendlyName) =>
        store.AddKeyElement(friendlyName, element.ToString(SaveOptions.DisableFormatting), CancellationToken.None).GetAwaiter().GetResult();
}
