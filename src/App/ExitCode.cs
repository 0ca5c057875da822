namespace Calx.App;

/// <summary>What a script learns from the program's end. docs/guide/command-line.md lists them.</summary>
internal static class ExitCode
{
    /// <summary>The answer is printed.</summary>
    public const int Done = 0;

    /// <summary>The answer is 'no' (cannot be balanced, nothing can be found); it is printed too.</summary>
    public const int No = 1;

    /// <summary>The input is bad; each fault has its line on standard error.</summary>
    public const int BadInput = 2;

    /// <summary>A mistake of the program itself (EX_SOFTWARE of sysexits.h).</summary>
    public const int ProgramMistake = 70;

    /// <summary>A result could not be written (EX_IOERR of sysexits.h).</summary>
    public const int CannotWrite = 74;

    /// <summary>Ended by Ctrl-C, as shells report it.</summary>
    public const int Interrupted = 130;
}
