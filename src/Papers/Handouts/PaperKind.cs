namespace Calx.Papers.Handouts;

/// <summary>The papers of a lesson.</summary>
public enum PaperKind
{
    /// <summary>The sheet that students work from, at one level of help or several.</summary>
    Student,

    /// <summary>What the technician puts out and takes back.</summary>
    Requisition,

    /// <summary>The teacher's key to the student sheet.</summary>
    Key,

    /// <summary>Notes for the teacher's own risk assessment.</summary>
    Risk,

    /// <summary>The lesson on one side: what is when, what to say when.</summary>
    Lesson,

    /// <summary>A workbook for the class's results.</summary>
    Results,

    /// <summary>What the class found, for the teacher, after the lesson.</summary>
    Report,

    /// <summary>What the class found, for the wall, after the lesson.</summary>
    Display,

    /// <summary>A lesson without practical work, for whoever takes it: cover sheet, questions for the class, key.</summary>
    Cover,
}
