using System.Globalization;
using System.Text;
using System.Xml;

namespace Calx.Papers.SheetCheck;

/// <summary>
/// Reads the text part of a word processor's file from front to back. No entity is expanded, no relationship is followed, and what is not on
/// the page (deleted with changes tracked, hidden, the second form of a drawing) is left out.
/// </summary>
internal sealed class WordSheet
{
    private readonly XmlReader reader;
    private readonly SheetBuilder sheet;
    private readonly Stack<OpenParagraph> paragraphs = [];
    private bool isRaised;
    private bool isHidden;
    private int raisedMath;

    private WordSheet(XmlReader reader, SheetBuilder sheet) => (this.reader, this.sheet) = (reader, sheet);

    /// <summary>Reads a sheet.</summary>
    /// <exception cref="XmlException">It is no well-formed XML, or deeper than is allowed.</exception>
    /// <exception cref="SheetTooLongException">It has more text than is read.</exception>
    public static Sheet Read(Stream content, IReadOnlyList<string> notes)
    {
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            MaxCharactersInDocument = SheetLimits.LargestText,
        };
        using XmlReader reader = XmlReader.Create(content, settings);
        var builder = new SheetBuilder(notes);
        new WordSheet(reader, builder).ReadAll();
        return builder.Build();
    }

    private void ReadAll()
    {
        bool more = reader.Read();
        while (more)
        {
            if (reader.Depth > SheetLimits.Depth)
            {
                throw new XmlException($"Elements are more than {SheetLimits.Depth} deep.");
            }

            if (reader.NodeType == XmlNodeType.Element && IsLeftOut())
            {
                reader.Skip();
                more = !reader.EOF;
                continue;
            }

            Take();
            more = reader.Read();
        }
    }

    // An empty w:del is a mark on a row or a paragraph; one with content holds what was deleted.
    private bool IsLeftOut() => reader.LocalName switch
    {
        "del" or "moveFrom" => IsWord && !reader.IsEmptyElement,
        "Fallback" => true,
        _ => false,
    };

    private bool IsWord => reader.NamespaceURI.Contains("/wordprocessingml/", StringComparison.Ordinal);

    private bool IsMath => reader.NamespaceURI.EndsWith("/math", StringComparison.Ordinal);

    private void Take()
    {
        if (reader.NodeType is XmlNodeType.Element && IsWord)
        {
            StartWord();
        }
        else if (reader.NodeType is XmlNodeType.EndElement && IsWord)
        {
            EndWord(reader.LocalName);
        }
        else if (reader.NodeType is XmlNodeType.Element or XmlNodeType.EndElement && IsMath)
        {
            TakeMath(reader.NodeType == XmlNodeType.Element);
        }
        else if (reader.NodeType is XmlNodeType.Text or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace && paragraphs.TryPeek(out OpenParagraph? p) && p.TakesText)
        {
            Append(isRaised || raisedMath > 0 ? RaisedText.Of(reader.Value) : reader.Value);
        }
    }

    private void StartWord()
    {
        bool isEmpty = reader.IsEmptyElement;
        string name = reader.LocalName;
        switch (name)
        {
            case "tbl": sheet.StartTable(); break;
            case "tr": sheet.StartRow(); break;
            case "tc": sheet.StartCell(); break;
            case "gridSpan": sheet.CellSpans(Number()); break;
            case "gridBefore": sheet.SkipColumns(Number()); break;
            case "vMerge" when Value() is not "restart": sheet.CellContinues(); break;
            case "del" when paragraphs.Count == 0: sheet.RowIsDeleted(); break;
            case "p": paragraphs.Push(new OpenParagraph()); break;
            case "pStyle" when paragraphs.TryPeek(out OpenParagraph? p): p.IsHeading |= IsHeadingStyle(Value()); break;
            case "r": (isRaised, isHidden) = (false, false); break;
            case "vertAlign": isRaised = Value() == "superscript"; break;
            case "vanish": isHidden = Value() is null or "1" or "true" or "on"; break;
            case "t" when !isEmpty && paragraphs.TryPeek(out OpenParagraph? p): p.TakesText = true; break;
            case "tab": Append(" "); break;
            case "br" or "cr": Append("\n"); break;
            case "noBreakHyphen": Append("-"); break;
        }

        if (isEmpty)
        {
            EndWord(name);
        }
    }

    private void EndWord(string name)
    {
        switch (name)
        {
            case "tbl": sheet.EndTable(); break;
            case "tr": sheet.EndRow(); break;
            case "tc": sheet.EndCell(); break;
            case "p" when paragraphs.TryPop(out OpenParagraph? p): sheet.Paragraph(p.Text.ToString(), p.IsHeading); break;
            case "t" when paragraphs.TryPeek(out OpenParagraph? p): p.TakesText = false; break;
            case "r": (isRaised, isHidden) = (false, false); break;
        }
    }

    // An equation as a line of text: a fraction as (above)/(below), what is raised as it is in text.
    private void TakeMath(bool starts)
    {
        bool isEmpty = starts && reader.IsEmptyElement;
        switch (reader.LocalName)
        {
            case "t" when !isEmpty && paragraphs.TryPeek(out OpenParagraph? p): p.TakesText = starts; break;
            case "num": Append(starts ? "(" : ")/"); break;
            case "den": Append(starts ? "(" : ")"); break;
            case "sup" when !isEmpty: raisedMath += starts ? 1 : -1; break;
        }
    }

    private void Append(string text)
    {
        if (isHidden || !paragraphs.TryPeek(out OpenParagraph? p))
        {
            return;
        }

        if (p.Text.Length + text.Length > SheetLimits.LongestParagraph)
        {
            throw new SheetTooLongException();
        }

        p.Text.Append(text);
    }

    private static bool IsHeadingStyle(string? style) =>
        style is not null && (style.StartsWith("Heading", StringComparison.OrdinalIgnoreCase) || style.EndsWith("Title", StringComparison.OrdinalIgnoreCase));

    private string? Value()
    {
        for (bool more = reader.MoveToFirstAttribute(); more; more = reader.MoveToNextAttribute())
        {
            if (reader.LocalName == "val")
            {
                string value = reader.Value;
                reader.MoveToElement();
                return value;
            }
        }

        reader.MoveToElement();
        return null;
    }

    private int Number() => int.TryParse(Value(), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 1;

    private sealed class OpenParagraph
    {
        public StringBuilder Text { get; } = new();

        public bool IsHeading { get; set; }

        public bool TakesText { get; set; }
    }
}
