using System.Collections.Immutable;
using CsCheck;
using Sightglass.Web.Live;
using Sightglass.World;

namespace Sightglass.Web.Tests;

/// <summary>What an instructor may do in a session: deeds between stretches of the wall's clock, at any pace.</summary>
internal static class Deeds
{
    public static Gen<Deed[]> Some { get; } =
        Gen.Select(Gen.Int[0, 4], Gen.Double[0.01, 0.9], Gen.Int[0, 8], (pace, seconds, what) => new Deed(Enum.GetValues<Pace>()[pace], seconds, Action(what))).Array[1, 14];

    public static void Work(LiveSession session, ManualClock clock, IEnumerable<Deed> deeds)
    {
        foreach (Deed deed in deeds)
        {
            session.SetPace(deed.Pace);
            for (int i = 0; i < 3; i++)
            {
                clock.Pass(deed.Seconds);
                session.Look();
            }

            if (deed.Action is { } action)
            {
                Assert.Null(session.Do(action));
            }
        }
    }

    private static WorldAction? Action(int what) => what switch
    {
        0 => new WorldAction.Operate(-1, "aft supply valve", "closed"),
        1 => new WorldAction.Operate(-1, "aft supply valve", "open"),
        2 => new WorldAction.Operate(-1, "throttle", "notch 8"),
        3 => new WorldAction.Operate(-1, "emergency fuel cut-off, cab", "pushed"),
        4 => new WorldAction.SetInput("grade", 0.01),
        5 => new WorldAction.PutIn("forward compartment", "leak", Values("diameter", 0.02)),
        6 => new WorldAction.TakeOut("forward compartment", "leak"),
        7 => new WorldAction.PutIn("cab fuel gauge", "bias", Values("error", 0.1)),
        _ => null,
    };

    private static ImmutableSortedDictionary<string, double> Values(string name, double value) =>
        ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal).Add(name, value);
}
