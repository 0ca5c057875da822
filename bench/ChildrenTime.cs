using System.Runtime.InteropServices;

namespace Calx.Bench;

/// <summary>Processor time of the processes that this one has started and that have ended, theirs included.</summary>
internal static partial class ChildrenTime
{
    private const int OfChildren = -1;   // RUSAGE_CHILDREN of POSIX getrusage

    /// <summary>User and system time together, in seconds.</summary>
    /// <exception cref="PlatformNotSupportedException">Windows, which does not keep it.</exception>
    public static double InSeconds()
    {
        if (OperatingSystem.IsWindows())
        {
            throw new PlatformNotSupportedException("The start-up time is measured on Linux and macOS.");
        }

        // struct rusage begins with two times, each seconds and microseconds; macOS keeps the latter in 32 bits.
        long[] usage = new long[32];
        if (GetResourceUsage(OfChildren, usage) != 0)
        {
            throw new InvalidOperationException("getrusage failed.");
        }

        return usage[0] + usage[2] + (1e-6 * unchecked((int)usage[1] + (int)usage[3]));
    }

    [LibraryImport("libc", EntryPoint = "getrusage")]
    private static partial int GetResourceUsage(int who, [In, Out] long[] usage);
}
