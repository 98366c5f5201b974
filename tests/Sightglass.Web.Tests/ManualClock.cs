namespace Sightglass.Web.Tests;

/// <summary>A clock on the wall that a test moves.</summary>
internal sealed class ManualClock : TimeProvider
{
    private long _now;

    public override long TimestampFrequency => 1_000_000;

    public override long GetTimestamp() => Interlocked.Read(ref _now);

    public void Pass(double seconds) => Interlocked.Add(ref _now, (long)(seconds * TimestampFrequency));
}
