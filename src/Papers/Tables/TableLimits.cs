namespace Calx.Papers.Tables;

/// <summary>How large a file is read. Each limit is far above any class's table and keeps a slip or an attack from
/// filling the memory.</summary>
public sealed class TableLimits
{
    /// <summary>Takes limits; those left out are the usual ones.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A limit is below 1.</exception>
    public TableLimits(
        long largestFile = 20_000_000,
        long largestExpanded = 400_000_000,
        int mostRows = 200_000,
        int mostColumns = 500,
        int longestCell = 32_767)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(largestFile, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(largestExpanded, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostRows, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostColumns, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(longestCell, 1);
        LargestFile = largestFile;
        LargestExpanded = largestExpanded;
        MostRows = mostRows;
        MostColumns = mostColumns;
        LongestCell = longestCell;
    }

    /// <summary>The usual limits.</summary>
    public static TableLimits Usual { get; } = new();

    /// <summary>Bytes of the file as it is: 200,000 rows of eight readings take 10 MB as text.</summary>
    public long LargestFile { get; }

    /// <summary>Bytes of a workbook once unpacked: twenty times a file of the largest size, which is what tables of
    /// digits pack to; a zip bomb unpacks to a thousand times its size.</summary>
    public long LargestExpanded { get; }

    /// <summary>Filled rows: twenty times the largest table that is promised to be fast (10,000 groups).</summary>
    public int MostRows { get; }

    /// <summary>Columns: a practical has some ten; a filled cell further right than this is a stray.</summary>
    public int MostColumns { get; }

    /// <summary>Characters of a cell: what spreadsheets themselves hold; a longer one is a quotation mark that was
    /// never closed.</summary>
    public int LongestCell { get; }
}
