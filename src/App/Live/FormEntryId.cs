using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calx.Records;

namespace Calx.App.Live;

/// <summary>
/// The id of the entry that a form or button will make. It is the same each time the page is shown until the journal has
/// grown, so that a part of the page that says the same stays in its place, and a double click is one entry. A key that is
/// drawn at each start keeps everybody else from taking the id first.
/// </summary>
public static class FormEntryId
{
    private const int Bytes = 16;

    private static readonly byte[] Key = RandomNumberGenerator.GetBytes(32);

    /// <summary>32 hexadecimal digits.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="mark">How far the journal has grown.</param>
    /// <param name="form">What the button is for.</param>
    public static string Of(RecordId lesson, long mark, string form) => Convert.ToHexStringLower(
        HMACSHA256.HashData(Key, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{lesson} {mark} {form}")))[..Bytes]);
}
