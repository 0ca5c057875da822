using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Documents as a word processor prints them, read back as text.</summary>
internal static partial class OfficePdf
{
    /// <summary>Whether the machine has what it takes.</summary>
    public static bool IsThere => Find("soffice") is not null && Find("pdftotext") is not null;

    /// <summary>The text of each document, with single spaces and a form feed at the end of each side.</summary>
    public static async Task<IReadOnlyDictionary<string, string>> Texts(IReadOnlyDictionary<string, byte[]> documents, CancellationToken cancellation)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-papers-");
        try
        {
            foreach ((string name, byte[] bytes) in documents)
            {
                await File.WriteAllBytesAsync(Path.Combine(folder.FullName, $"{name}.docx"), bytes, cancellation);
            }

            await Run("soffice", [$"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "pdf", "--outdir", folder.FullName, .. documents.Keys.Select(n => Path.Combine(folder.FullName, $"{n}.docx"))], cancellation);
            var texts = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (string name in documents.Keys)
            {
                string pdf = Path.Combine(folder.FullName, $"{name}.pdf");
                Assert.True(File.Exists(pdf), $"{name} did not open.");
                texts[name] = Spaces().Replace(await Run("pdftotext", ["-layout", pdf, "-"], cancellation), " ");
            }

            return texts;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(d => Path.Combine(d, program)).FirstOrDefault(File.Exists);

    private static async Task<string> Run(string program, IEnumerable<string> words, CancellationToken cancellation)
    {
        using Process process = Process.Start(new ProcessStartInfo(Find(program)!, words) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync(cancellation);
        string said = await process.StandardOutput.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        Assert.True(process.ExitCode == 0, await errors);
        return said;
    }

    /// <summary>All but the form feed.</summary>
    [GeneratedRegex(@"[^\S\f]+")]
    private static partial Regex Spaces();
}
