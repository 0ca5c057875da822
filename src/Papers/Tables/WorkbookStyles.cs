using System.Globalization;
using System.Xml;
using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Tables;

/// <summary>The number format of each cell style of a workbook.</summary>
internal sealed class WorkbookStyles
{
    private readonly List<NumberFormat> byStyle = [];

    private WorkbookStyles()
    {
    }

    /// <summary>The format of a cell's style; General where the file names none.</summary>
    public NumberFormat Of(int style) => style >= 0 && style < byStyle.Count ? byStyle[style] : NumberFormat.General;

    /// <summary>Reads the styles; a workbook may have none.</summary>
    public static WorkbookStyles Read(WorkbookPart workbook, ExpansionBudget budget)
    {
        WorkbookStyles styles = new();
        if (workbook.WorkbookStylesPart is not { } part)
            return styles;
        using XmlReader reader = WorkbookXml.Open(part, budget);
        Dictionary<int, NumberFormat> formats = [];
        bool ofCells = false;
        while (reader.Read())
        {
            if (reader.LocalName == "cellXfs")
                ofCells = reader.NodeType == XmlNodeType.Element && !reader.IsEmptyElement;
            else if (reader.NodeType != XmlNodeType.Element)
                continue;
            else if (reader.LocalName == "numFmt")
                formats[Number(reader, "numFmtId")] = NumberFormat.Parse(reader.GetAttribute("formatCode") ?? "");
            else if (reader.LocalName == "xf" && ofCells)
                styles.byStyle.Add(Format(Number(reader, "numFmtId"), formats));
        }
        return styles;
    }

    private static NumberFormat Format(int id, Dictionary<int, NumberFormat> formats) =>
        formats.GetValueOrDefault(id) ?? NumberFormat.BuiltIn(id) ?? NumberFormat.General;

    private static int Number(XmlReader reader, string attribute) =>
        int.TryParse(reader.GetAttribute(attribute), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
}
