using Calx.Papers.Documents;
using Calx.Papers.Spreadsheets;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>The papers of a lesson: documents, to print and for a word processor, and workbooks for a spreadsheet.</summary>
public sealed class PaperSet
{
    private PaperSet(IReadOnlyList<Paper> documents, IReadOnlyList<ResultsWorkbook> workbooks) => (Documents, Workbooks) = (documents, workbooks);

    /// <summary>What is printed.</summary>
    public IReadOnlyList<Paper> Documents { get; }

    /// <summary>What is filled in on a computer.</summary>
    public IReadOnlyList<ResultsWorkbook> Workbooks { get; }

    /// <summary>Makes them.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="kinds">Which papers.</param>
    /// <param name="levels">How much the student sheets help.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    public static PaperSet Of(PaperSetting setting, IReadOnlyList<PaperKind> kinds, IReadOnlyList<SupportLevel> levels, PlanStock? stock = null)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(levels);
        List<Paper> documents = [];
        List<ResultsWorkbook> workbooks = [];
        foreach (PaperKind kind in kinds)
        {
            switch (kind)
            {
                case PaperKind.Student: documents.AddRange(levels.Select(level => StudentSheet.Of(setting, level))); break;
                case PaperKind.Requisition: documents.Add(RequisitionSheet.Of(setting, stock)); break;
                case PaperKind.Key: documents.Add(AnswerKey.Of(setting)); break;
                case PaperKind.Risk: documents.Add(RiskNotes.Of(setting)); break;
                case PaperKind.Lesson: documents.Add(LessonStrip.Of(setting)); break;
                case PaperKind.Results: workbooks.Add(ResultsWorkbook.Of(setting)); break;
                default: throw new ArgumentOutOfRangeException(nameof(kinds), kind, "There is no such paper.");
            }
        }

        return new PaperSet(documents, workbooks);
    }
}
