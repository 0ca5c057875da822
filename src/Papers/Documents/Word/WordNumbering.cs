using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>The lists of a document: each numbered one begins at 1.</summary>
internal sealed class WordNumbering
{
    private readonly List<ListKind> begun = [];

    /// <summary>Begins a list and returns its number in the file.</summary>
    public int Begin(ListKind kind)
    {
        begun.Add(kind);
        return begun.Count;
    }

    /// <summary>Writes what the lists look like.</summary>
    public void Write(MainDocumentPart main)
    {
        var numbering = new Numbering();
        foreach (ListKind kind in Enum.GetValues<ListKind>())
        {
            numbering.Append(Kind(kind));
        }

        for (int i = 0; i < begun.Count; i++)
        {
            var list = new NumberingInstance(new AbstractNumId { Val = (int)begun[i] }) { NumberID = i + 1 };
            if (begun[i] == ListKind.Numbers)
            {
                list.Append(new LevelOverride(new StartOverrideNumberingValue { Val = 1 }) { LevelIndex = 0 });
            }

            numbering.Append(list);
        }

        main.AddNewPart<NumberingDefinitionsPart>().Numbering = numbering;
    }

    private static AbstractNum Kind(ListKind kind)
    {
        (NumberFormatValues format, string sign) = kind switch
        {
            ListKind.Numbers => (NumberFormatValues.Decimal, "%1"),
            ListKind.Ticks => (NumberFormatValues.Bullet, "\u25A1"),
            _ => (NumberFormatValues.Bullet, "\u2022"),
        };
        var level = new Level(
            new StartNumberingValue { Val = 1 },
            new NumberingFormat { Val = format },
            new LevelText { Val = sign },
            new LevelJustification { Val = LevelJustificationValues.Left },
            new PreviousParagraphProperties(new Indentation { Left = WordLength.Text(6.5), Hanging = WordLength.Text(6.5) }))
        { LevelIndex = 0 };
        if (kind == ListKind.Numbers)
        {
            level.Append(new NumberingSymbolRunProperties(new Bold()));
        }

        return new AbstractNum(new MultiLevelType { Val = MultiLevelValues.SingleLevel }, level) { AbstractNumberId = (int)kind };
    }
}
