using System.Runtime.InteropServices;

namespace Sightglass.Bench;

/// <summary>Processor time of the calling thread: what others do on the machine meanwhile weighs less than on a wall clock. Linux only, as the baseline.</summary>
internal static unsafe partial class ProcessorTime
{
    private const int ThreadClock = 3;

    /// <summary>Seconds.</summary>
    public static double Now
    {
        get
        {
            long* time = stackalloc long[2];
            return GetTime(ThreadClock, time) == 0 ? time[0] + (time[1] * 1e-9) : throw new InvalidOperationException("There is no clock for a thread's processor time.");
        }
    }

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    private static partial int GetTime(int clock, long* time);
}
