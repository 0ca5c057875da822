using System.Diagnostics;
using Calx.Records.Journal;
using Calx.Records.Storage;

namespace Calx.Browser.Tests.Students;

/// <summary>
/// A phone in a network of its own, whose link is taken down for real: no error comes back, packets vanish. Only where this
/// process may make network namespaces.
/// </summary>
public sealed class CutOffTests
{
    private const string Space = "calx-phone";
    private const string Passphrase = "four plain words here";

    /// <summary>For minutes in the long run, as when a phone goes to another room.</summary>
    private static readonly TimeSpan CutFor = TimeSpan.FromSeconds(Environment.GetEnvironmentVariable("CALX_LONG") == "1" ? 180 : 20);

    [Fact]
    public async Task Readings_sent_while_the_link_is_cut_arrive_once()
    {
        bool made = await MakeSpace();
        Assert.SkipUnless(made, "Network namespaces cannot be made here, or python3 is missing.");
        try
        {
            await Rehearse(TestContext.Current.CancellationToken);
        }
        finally
        {
            await Remove();
        }
    }

    private static async Task Rehearse(CancellationToken cancellation)
    {
        using var folder = new ScratchFolder();
        RehearsedLesson lesson = await RehearsedLesson.Write(folder.FullName);
        string file = folder.PathOf("passphrase"), script = folder.PathOf("phone.py");
        await File.WriteAllTextAsync(file, Passphrase, cancellation);
        await File.WriteAllTextAsync(script, PhoneScript, cancellation);
        await using RunningProgram program = await RunningProgram.Start(
            new ProgramStart(folder.FullName) { Words = ["--lan", "--passphrase-file", file] });
        using Process phone = Process.Start(new ProcessStartInfo(
            "ip", ["netns", "exec", Space, "python3", script, $"http://10.77.0.1:{program.Address.Port}", lesson.Code, (CutFor.TotalSeconds + 10).ToString(System.Globalization.CultureInfo.InvariantCulture)])
        { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = phone.StandardError.ReadToEndAsync(cancellation);
        string? began = await phone.StandardOutput.ReadLineAsync(cancellation);
        Assert.True(began == "sending", began ?? await errors);
        await Ip("link", "set", "calx-room", "down");
        await Task.Delay(CutFor, cancellation);
        await Ip("link", "set", "calx-room", "up");
        string[] acknowledged = (await phone.StandardOutput.ReadToEndAsync(cancellation)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        await phone.WaitForExitAsync(cancellation);
        Assert.True(phone.ExitCode == 0, await errors);
        await program.Kill();
        await Check(folder.FullName, lesson, acknowledged);
    }

    /// <summary>A device that types for ten seconds longer than the link is cut and sends what was not acknowledged again under the same id.</summary>
    private const string PhoneScript = """
        import http.cookiejar, json, secrets, sys, time, urllib.error, urllib.parse, urllib.request

        address, code, seconds = sys.argv[1], sys.argv[2], float(sys.argv[3])
        opener = urllib.request.build_opener(urllib.request.ProxyHandler({}), urllib.request.HTTPCookieProcessor(http.cookiejar.CookieJar()))

        def post(path, body, kind, patience):
            request = urllib.request.Request(address + path, body, {"Content-Type": kind, "Origin": address})
            return opener.open(request, timeout=patience).read()

        form = "application/x-www-form-urlencoded"
        post("/join", urllib.parse.urlencode({"code": code}).encode(), form, 60)
        post("/groups", urllib.parse.urlencode({"group": "1"}).encode(), form, 60)
        print("sending", flush=True)
        pending, acknowledged, end = [], [], time.monotonic() + seconds
        while time.monotonic() < end or pending:
            if time.monotonic() < end:
                pending.append({"id": secrets.token_hex(16), "kind": "note", "what": "note", "trial": 1, "text": str(len(acknowledged) + len(pending))})
            try:
                answer = json.loads(post("/table/entries", json.dumps({"entries": pending[:50]}).encode(), "application/json", 3))
                done = {r["id"] for r in answer["results"] if r["result"] in ("added", "known")}
                acknowledged += [e["id"] for e in pending if e["id"] in done]
                pending = [e for e in pending if e["id"] not in done]
            except OSError:
                pass
            time.sleep(0.2)
        print("\n".join(acknowledged))
        """;

    private static async Task<bool> MakeSpace()
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess || !File.Exists("/usr/bin/python3"))
        {
            return false;
        }

        // One that an ended run has left behind.
        await Remove();
        return await Ip("netns", "add", Space) && await Ip("link", "add", "calx-room", "type", "veth", "peer", "name", "calx-desk", "netns", Space)
            && await Ip("address", "add", "10.77.0.1/24", "dev", "calx-room") && await Ip("link", "set", "calx-room", "up")
            && await Ip("-n", Space, "address", "add", "10.77.0.2/24", "dev", "calx-desk") && await Ip("-n", Space, "link", "set", "calx-desk", "up");
    }

    private static async Task Remove()
    {
        await Ip("netns", "delete", Space);
        await Ip("link", "delete", "calx-room");
    }

    private static async Task<bool> Ip(params string[] words)
    {
        try
        {
            using Process ip = Process.Start(new ProcessStartInfo("ip", words) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            await ip.WaitForExitAsync();
            return ip.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static async Task Check(string dataFolder, RehearsedLesson lesson, string[] acknowledged)
    {
        await using RecordStore store = await RehearsedLesson.Open(dataFolder);
        string[] kept = [.. (await store.Entries(lesson.Id)).Where(e => e.Entry.Content is EntryContent.Note).Select(e => e.Entry.Id.ToString())];

        // Ten seconds have a link, five entries a second at the most; a slow machine makes fewer.
        Assert.True(acknowledged.Length > 20, $"Only {acknowledged.Length} entries were acknowledged.");
        Assert.Equal(acknowledged.Order(StringComparer.Ordinal), kept.Order(StringComparer.Ordinal));
        Assert.Equal(kept.Length, kept.Distinct().Count());
    }
}
