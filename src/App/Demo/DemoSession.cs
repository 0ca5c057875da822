using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Serving;

namespace Calx.App.Demo;

/// <summary>Serves the pages of an invented lesson until Ctrl-C.</summary>
public static class DemoSession
{
    /// <summary>Runs it and returns an exit code.</summary>
    public static int Run(int? port, Surroundings surroundings)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-demo-");
        try
        {
            var clock = new ShiftedClock();
            var words = new ServeWords(folder.FullName, port, false, null, null, null, null, null, OpensBrowser: true);
            ServeOptions options = words.Options(surroundings)! with { Invented = true };
            surroundings.Output.WriteLine();
            return ServeSession.Run(options, words, surroundings, clock, (store, cancellation) => new DemoLesson(store, clock).Write(cancellation))
                .GetAwaiter().GetResult();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
