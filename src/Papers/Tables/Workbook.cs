using System.Xml;
using Calx.Papers.Texts;
using Calx.Practicals.Readings;
using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Tables;

/// <summary>Reads the visible sheets of an XLSX workbook, cells as they are shown.</summary>
internal sealed class Workbook
{
    private readonly WorkbookPart part;
    private readonly TableLimits limits;
    private readonly TableTexts texts;
    private readonly ExpansionBudget budget;
    private readonly List<string> notes = [];
    private readonly List<CellTable> sheets = [];

    private Workbook(WorkbookPart part, TableLimits limits, TableTexts texts)
    {
        this.part = part;
        this.limits = limits;
        this.texts = texts;
        budget = new ExpansionBudget(limits.LargestExpanded);
    }

    /// <summary>Reads a workbook.</summary>
    public static TableFile Read(byte[] bytes, TableLimits limits, TableTexts texts)
    {
        try
        {
            using SpreadsheetDocument document = SpreadsheetDocument.Open(new MemoryStream(bytes, false), false);
            return document.WorkbookPart is WorkbookPart part ? new Workbook(part, limits, texts).Read() : Damaged(texts);
        }
        catch (ExpansionException)
        {
            return FileContent.TooLargeUnpacked(limits, texts);
        }
        // What the packaging and XML layers throw at a damaged or forged file; the file is at fault, never the program.
        catch (Exception e) when (e is OpenXmlPackageException or XmlException or InvalidDataException or FormatException
            or ArgumentException or InvalidOperationException or NotSupportedException or OverflowException or IOException
            or KeyNotFoundException)
        {
            return Damaged(texts);
        }
    }

    private static TableFile.Fault Damaged(TableTexts texts) => new(TableFaultKind.Damaged, texts.DamagedInside);

    private TableFile Read()
    {
        (List<SheetEntry> entries, bool from1904) = Entries();
        WorkbookStyles styles = WorkbookStyles.Read(part, budget);
        List<string> shared = SharedTexts();
        int rows = 0;
        foreach (SheetEntry entry in entries)
        {
            if (part.GetPartById(entry.PartId) is not WorksheetPart sheet)
                continue;
            if (entry.Hidden)
            {
                notes.Add(texts.HiddenSheet(entry.Name));
                continue;
            }
            WorkbookSheet read = new(entry.Name, styles, shared, from1904, limits, limits.MostRows - rows, texts);
            using (XmlReader reader = WorkbookXml.Open(sheet, budget))
                read.Read(reader);
            if (read.Fault is TableFile.Fault fault)
                return fault;
            Add(read, sheet);
            rows += read.FilledRows;
        }
        return sheets.Count > 0
            ? new TableFile.Opened(sheets, texts.WorkbookFormat, notes)
            : new TableFile.Fault(TableFaultKind.Empty, texts.NoVisibleSheet);
    }

    private void Add(WorkbookSheet read, WorksheetPart sheet)
    {
        if (read.FilledRows == 0)
            return;
        sheets.Add(read.Table());
        notes.AddRange(read.Notes);
        if (sheet.WorksheetCommentsPart is not null || sheet.WorksheetThreadedCommentsParts.Any())
            notes.Add(texts.Comments(read.Name));
    }

    private (List<SheetEntry> Entries, bool From1904) Entries()
    {
        List<SheetEntry> entries = [];
        bool from1904 = false;
        using XmlReader reader = WorkbookXml.Open(part, budget);
        while (reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element)
                continue;
            if (reader.LocalName == "workbookPr")
                from1904 = reader.GetAttribute("date1904") is "1" or "true";
            else if (reader.LocalName == "sheet")
                entries.Add(SheetEntry.Read(reader));
        }
        return (entries, from1904);
    }

    private List<string> SharedTexts()
    {
        List<string> found = [];
        if (part.SharedStringTablePart is not { } shared)
            return found;
        using XmlReader reader = WorkbookXml.Open(shared, budget);
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.Element && reader.LocalName == "si")
                found.Add(WorkbookXml.RichText(reader));
        }
        return found;
    }

    /// <summary>A sheet as the workbook lists it.</summary>
    private sealed record SheetEntry(string Name, string PartId, bool Hidden)
    {
        public static SheetEntry Read(XmlReader reader)
        {
            string id = "";
            for (bool more = reader.MoveToFirstAttribute(); more; more = reader.MoveToNextAttribute())
            {
                // The attribute of the relationship has one of two namespaces, by edition of the standard.
                if (reader.LocalName == "id" && reader.NamespaceURI.EndsWith("/relationships", StringComparison.Ordinal))
                    id = reader.Value;
            }
            reader.MoveToElement();
            return new SheetEntry(
                reader.GetAttribute("name") ?? "", id, reader.GetAttribute("state") is "hidden" or "veryHidden");
        }
    }
}
