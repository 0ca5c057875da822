namespace Calx.Papers.Reports;

/// <summary>The font of charts and reports, for a page that serves it as files (WOFF 2, SIL Open Font License 1.1). The name
/// that the sheets know it by is <c>Calx Sans</c>.</summary>
public static class ReportFonts
{
    /// <summary>The font's media type.</summary>
    public const string MediaType = "font/woff2";

    /// <summary>The regular face, weight 400: a new stream, the caller's to dispose of.</summary>
    public static Stream Regular() => StyleFile.Open("CalxSans-Regular.woff2");

    /// <summary>The bold face, weight 700: a new stream, the caller's to dispose of.</summary>
    public static Stream Bold() => StyleFile.Open("CalxSans-Bold.woff2");
}
