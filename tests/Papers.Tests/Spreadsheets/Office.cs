using System.Diagnostics;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>A spreadsheet program from outside, where the machine has one.</summary>
internal static class Office
{
    /// <summary>Its full path, or null.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "soffice")).FirstOrDefault(File.Exists);

    /// <summary>Opens a workbook, works all of its formulas out and saves it.</summary>
    public static async Task<byte[]> Recalculated(byte[] workbook, CancellationToken cancellation)
    {
        Assert.SkipUnless(Program is not null, "LibreOffice (soffice) is not installed: nothing here can work a workbook's formulas out.");
        DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-");
        try
        {
            string file = Path.Combine(folder.FullName, "class.xlsx");
            await File.WriteAllBytesAsync(file, workbook, cancellation);
            string saved = Path.Combine(folder.FullName, "saved");
            var start = new ProcessStartInfo(Program!)
            {
                RedirectStandardOutput = true, RedirectStandardError = true,
                ArgumentList =
                {
                    "--headless", $"-env:UserInstallation={new Uri(Path.Combine(folder.FullName, "profile"))}",
                    "--convert-to", "xlsx", "--outdir", saved, file,
                },
            };
            using Process process = Process.Start(start)!;
            Task<string> output = process.StandardOutput.ReadToEndAsync(cancellation);
            string error = await process.StandardError.ReadToEndAsync(cancellation);
            await process.WaitForExitAsync(cancellation);
            string result = Path.Combine(saved, "class.xlsx");
            Assert.True(File.Exists(result), $"{await output}{error}");
            return await File.ReadAllBytesAsync(result, cancellation);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
