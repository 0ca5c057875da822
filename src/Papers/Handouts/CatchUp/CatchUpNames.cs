using System.Security.Cryptography;
using System.Text;
using Calx.Practicals.CatchUp;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>What the files of a class's packs are called: small letters, digits and hyphens, which every system takes.</summary>
public static class CatchUpNames
{
    /// <summary>The teacher's key.</summary>
    public const string Key = "catch-up-key";

    private const int Longest = 40;
    private const int HashLength = 6;

    /// <summary>A name for each student, without an ending. Each follows from the student alone and all are different.</summary>
    /// <param name="students">The students, no two with one key.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<CatchUpStudent> students)
    {
        ArgumentNullException.ThrowIfNull(students);
        string[] names = [.. students.Select(Of)];
        // Six hexadecimal digits of two odd names are the same once in 16 million: then all of the digits are taken.
        HashSet<string> several = [.. names.GroupBy(n => n).Where(n => n.Count() > 1).Select(n => n.Key)];
        return [.. names.Select((name, i) => several.Contains(name) ? $"{name}-{Hash(students[i].Key)}" : name)];
    }

    /// <summary>A name of plain letters and digits is kept; of any other what is left of it, with a few digits of its hash.</summary>
    private static string Of(CatchUpStudent student)
    {
        string name = CatchUpStudent.Normal(student.Name);
        string plain = string.Join('-', new string([.. name.Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        bool isKept = plain.Length <= Longest && name == plain.Replace('-', ' ') && student.Key == name;
        return isKept ? $"catch-up-{plain}" : $"catch-up-{string.Join('-', Short(plain), Hash(student.Key)[..HashLength]).TrimStart('-')}";
    }

    private static string Short(string plain) => plain.Length <= Longest ? plain : plain[..Longest].TrimEnd('-');

    private static string Hash(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));
}
