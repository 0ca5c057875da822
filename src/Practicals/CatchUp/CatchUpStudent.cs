using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calx.Practicals.Texts;

namespace Calx.Practicals.CatchUp;

/// <summary>Somebody who gets data of their own. The key alone decides which; the name is printed.</summary>
public sealed record CatchUpStudent
{
    private CatchUpStudent(string key, string name) => (Key, Name) = (key, name);

    /// <summary>What the data follow from, together with the class's seed.</summary>
    public string Key { get; }

    /// <summary>As printed.</summary>
    public string Name { get; }

    /// <summary>Somebody of a list of names: capitals and spaces do not matter, so that a list typed anew gives the same data.</summary>
    /// <param name="name">The name; not blank.</param>
    public static CatchUpStudent Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new CatchUpStudent(Normal(name), name.Trim());
    }

    /// <summary>Somebody of a class that keeps numbers: the number is the same though the name was changed or forgotten.</summary>
    /// <param name="number">The number in the class, from 1.</param>
    /// <param name="name">The name, or empty; then the number is printed.</param>
    /// <param name="language">The language of what is printed then; British where nothing else is said.</param>
    public static CatchUpStudent Numbered(int number, string name, EngineLanguage? language = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentNullException.ThrowIfNull(name);
        string own = number.ToString(CultureInfo.InvariantCulture);
        return new CatchUpStudent($"number {own}", name.Trim().Length > 0 ? name.Trim() : new Wording(language ?? EngineLanguage.British).Student(own));
    }

    /// <summary>A name without what people type one way today and another tomorrow: capitals, and spaces at its ends or in a row.</summary>
    public static string Normal(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();
    }

    /// <summary>The seed of this student's data: no other student changes it.</summary>
    internal ulong SeedIn(ulong classSeed)
    {
        byte[] text = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{classSeed}\n{Key}"));
        return BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(text));
    }
}
