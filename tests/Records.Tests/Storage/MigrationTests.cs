using System.IO.Compression;
using Calx.Records.Archive;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>Databases that released versions made are opened by this one with all that was in them.</summary>
public abstract class MigrationTests(Place place, string kind)
{
    private static string Text(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Migrations", name));

    /// <summary>The archive that the same version wrote is the judge: both lead to the same records.</summary>
    [Theory]
    [InlineData(1)]
    public async Task A_database_of_an_older_version_opens_with_all_its_records(int version)
    {
        await using RecordStore opened = await Older(version);
        await using RecordStore judge = await place.OpenFresh();
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(judge, Zip(Text($"{version}-records.json")), Sample.By, Sample.Cancel));
        Assert.Empty(taken.Refused);
        Assert.Equal(await Records(judge), await Records(opened));
    }

    /// <summary>Read by hand in the dumps.</summary>
    [Theory]
    [InlineData(1)]
    public async Task Readings_of_an_older_version_stand_as_they_were_written(int version)
    {
        await using RecordStore opened = await Older(version);
        IReadOnlyList<KeptEntry> kept = await opened.Entries(Sample.LessonId, 0, Sample.Cancel);
        Assert.Equal(["30.10", "30.43", "30.34", "31.0"], kept.Select(k => k.Entry.Content).OfType<EntryContent.Reading>().Select(r => r.Written.ToString()));
        Assert.Equal(("looked again at the display", Sample.Id(2)), (kept[2].Entry.Reason, kept[2].Entry.Replaces!.Value));
        Assert.Equal(new DateTimeOffset(2026, 3, 4, 13, 4, 5, 678, TimeSpan.FromHours(1)), kept[3].Entry.TypedAt);
        Lesson invented = Assert.Single(await opened.Lessons(Sample.Cancel), l => l.Id != Sample.LessonId);
        Assert.Equal(152, (await opened.Entries(invented.Id, 0, Sample.Cancel)).Count);
    }

    [Theory]
    [InlineData(1)]
    public async Task What_no_archive_holds_comes_from_an_older_version_too(int version)
    {
        await using RecordStore opened = await Older(version);
        Assert.Equal("Larkmoor School", await opened.Setting("school-name", Sample.Cancel));
        Assert.Equal("an invented hash", await opened.Setting("passphrase", Sample.Cancel));
        Assert.Equal(["<key id='invented'/>"], await opened.KeyElements(Sample.Cancel));
        LessonDoor door = (await opened.DoorOf(Sample.LessonId, Sample.Cancel))!;
        Assert.Equal(door, await opened.FindDoor(door.Code, Sample.Cancel));
        AuditLine named = Assert.Single(await opened.Audit(100, Sample.Cancel), l => l.What == "member-put" && l.Before is not null);
        Assert.Equal(("""{"name":"Ode"}""", """{"name":"Odette"}"""), (named.Before, named.After));
    }

    [Theory]
    [InlineData(1)]
    public async Task An_older_version_once_opened_is_kept_on_with(int version)
    {
        await using RecordStore opened = await Older(version);
        AppendResult.Added added = Assert.IsType<AppendResult.Added>(await opened.Append(Sample.LessonId, Sample.Reading(500, 3, "empty", "29.90"), Sample.Cancel));
        Assert.Equal(Sample.OfEachKind().Length + 1, added.Kept.Number);
        await Sample.Done(opened.PutMember(new Member(Sample.ClassId, 2, "Tamsin"), Sample.By, Sample.Cancel));
    }

    private async Task<RecordStore> Older(int version)
    {
        StoreSettings settings = await place.Fresh();
        await place.Execute(settings, Text($"{version}-{kind}.sql"));
        return await place.Open(settings);
    }

    private static MemoryStream Zip(string records)
    {
        var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        using (var writer = new StreamWriter(zip.CreateEntry("records.json").Open()))
        {
            writer.Write(records);
        }

        return bytes;
    }

    private static async Task<string> Records(RecordStore store)
    {
        using var bytes = new MemoryStream();
        await LessonArchive.WriteAll(store, bytes, null, Sample.Cancel);
        using var zip = new ZipArchive(bytes);
        using var reader = new StreamReader(await zip.GetEntry("records.json")!.OpenAsync(Sample.Cancel));
        return await reader.ReadToEndAsync(Sample.Cancel);
    }
}
