using System.Buffers.Binary;
using System.Security.Cryptography;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>Draws the id of an entry for a form, before it is filled in, or of an act of the program.</summary>
public static class NewEntryId
{
    private const int Bytes = 16;

    /// <summary>128 random bits, not all 0.</summary>
    public static EntryId Draw()
    {
        while (true)
        {
            UInt128 bits = BinaryPrimitives.ReadUInt128BigEndian(RandomNumberGenerator.GetBytes(Bytes));
            if (bits != 0)
            {
                return EntryId.Of(bits);
            }
        }
    }
}
