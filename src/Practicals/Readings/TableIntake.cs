using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>What has been read of one sheet so far: groups, rejected cells and notes.</summary>
internal sealed class TableIntake(CellTable table, IReadOnlyDictionary<int, string> headings, EngineLanguage language)
{
    public EngineLanguage Language => language;

    public ClassFileTexts Texts { get; } = new(language);

    public Wording Wording { get; } = new(language);

    public CellTable Table { get; } = table;

    public List<RawGroup> Groups { get; } = [];

    public List<RejectedCell> Rejected { get; } = [];

    public List<ReadingNote> Notes { get; } = [];

    public CellPosition At(int row, int column) => new(Table.Sheet, row, column);

    public string Heading(int column) => headings.GetValueOrDefault(column, "").Trim();

    public void Reject(int row, TableCell cell, string reason) =>
        Rejected.Add(new RejectedCell(At(row, cell.Column), Heading(cell.Column), cell.Text, reason));

    public void Note(string text, CellPosition? cell = null) => Notes.Add(new ReadingNote(text, cell));
}
