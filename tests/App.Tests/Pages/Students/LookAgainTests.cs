using System.Security.Cryptography;

namespace Calx.App.Tests.Pages.Students;

/// <summary>The question about a reading: asked once, neutrally, and never instead of keeping it.</summary>
public sealed class LookAgainTests
{
    private const string Question = "Look again at the display.";

    [Fact]
    public async Task A_reading_with_two_digits_swapped_is_kept_and_asked_about_once()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        var swapped = Entries.Reading("before", "32.35");
        Assert.Equal(("added", null, Question), (await device.Tell(swapped)).Single());
        Assert.Equal(("known", null, null), (await device.Tell(swapped)).Single());
        Assert.Equal(2, (await lesson.Journal()).Count);
    }

    [Fact]
    public async Task What_was_typed_after_looking_again_is_not_asked_about()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        string first = Entries.Id();
        await device.Tell(Entries.Reading("empty", "23.11"));
        await device.Tell(Entries.Reading("before", "32.35", first));
        var again = await device.Tell(Entries.Reading("before", "32.36").With("replaces", first).With("reason", "looked at the display again"));
        Assert.Equal(("added", null, null), again.Single());
    }

    [Fact]
    public async Task A_device_that_sends_faster_than_anybody_types_has_all_kept_and_is_asked_about_the_first_few_at_most()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        var asked = new List<string?>();
        for (int i = 0; i < 8; i++)
        {
            // The same ordinary reading under ids spread over all 128 bits; each stands beside the first and is asked about by itself.
            var sent = Enumerable.Range(50 * i, 50).Select(n => Entries.Reading("empty", "23.11", SpreadId(n)));
            (string Result, string? Reason, string? Ask)[] answers = [.. await device.Tell([.. sent])];
            Assert.All(answers, a => Assert.Equal("added", a.Result));
            asked.AddRange(answers.Select(a => a.Ask));
        }

        Assert.All(asked, a => Assert.True(a is null or Question));
        // Of the six that may be asked about at once and one in two seconds after; that it is one ordinary reading in ten of those is a
        // test of the engine's (ReadingQueryTests).
        Assert.InRange(asked.Count(a => a is not null), 0, 20);
    }

    [Fact]
    public async Task In_an_assessed_lesson_nothing_is_asked()
    {
        await using Taught lesson = await Taught.Start(assessed: true);
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        Assert.Equal(("added", null, null), (await device.Tell(Entries.Reading("before", "32.35"))).Single());
    }

    private static string SpreadId(int number) => Convert.ToHexStringLower(SHA256.HashData(BitConverter.GetBytes(number)))[..32];
}
