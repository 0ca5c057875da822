using Calx.Rehearsal;

namespace Calx.App.Tests.Serving;

/// <summary>What the program says on the terminal when it opens its pages.</summary>
public sealed class ServeStartTests
{
    [Fact]
    public async Task A_program_that_phones_cannot_reach_says_so_and_how_to_start_it_for_them()
    {
        using var folder = new ScratchFolder();
        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName));
        Assert.Contains(program.Said, line => line.StartsWith("On this machine only", StringComparison.Ordinal) && line.EndsWith("calx serve --lan", StringComparison.Ordinal));
    }
}
