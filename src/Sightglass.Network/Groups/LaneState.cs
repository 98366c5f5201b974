using Sightglass.Basics.Time;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

/// <summary>Clock, step control and request of one lane. Times are ticks of <see cref="SimTime"/>.</summary>
internal sealed class LaneState
{
    /// <summary>Time of the committed state.</summary>
    public long Committed;

    /// <summary>End of the pending step.</summary>
    public long Pending;

    public bool HasPending;

    /// <summary>Size of the next attempt in ticks; 0 when it is to be made from the flows.</summary>
    public long NextSize;

    /// <summary>What <see cref="NextSize"/> was when the step was asked for.</summary>
    public long SizeAtProposal;

    public LaneTask Task;

    /// <summary>The moment asked for by a cut or a peek.</summary>
    public long Target;

    /// <summary>The switch whose crossing is being closed in on.</summary>
    public int Guard;

    /// <summary>Open while a crossing is being closed in on.</summary>
    public Bracket Bracket;

    /// <summary>Size the error allowed before a landing shortened the step; 0 otherwise.</summary>
    public long AllowedSize;

    /// <summary>How many times in a row a step was shortened to look at a switch's peak.</summary>
    public int Peaks;

    /// <summary>Switches that fire at the end of the pending step.</summary>
    public readonly GuardSet Fired = new();

    /// <summary>Whether what is in view lies on the line between the ends of the pending step.</summary>
    public bool IsBetween;

    /// <summary>Accepted steps since the load.</summary>
    public long Steps;

    /// <summary>Attempts in all, rejected and looked-at ones included.</summary>
    public long Attempts;

    /// <summary>Set when even the least step was refused.</summary>
    public bool Failed;

    /// <summary>Size of the attempt under way.</summary>
    public long Size;

    public void Reset()
    {
        Committed = Pending = NextSize = Target = AllowedSize = Size = 0;
        HasPending = Failed = IsBetween = false;
        Task = LaneTask.None;
        Bracket = default;
        Fired.Clear();
        Peaks = 0;
        Steps = Attempts = 0;
    }
}
