using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>One card worked on the trade's machine, with protections and hazards of its own.</summary>
internal static class Card
{
    public const string Situation = """
      standing:
        people:
          - { role: hand, at: [cab] }
          - { role: mate, at: [cab] }
          - { role: guard, at: [cab] }
        start: { fill of compartment A: 50 %, fill of compartment B: 50 %, fill of compartment C: 50 %, throttle: idle }
    """;

    /// <summary>A book of the machine with further sections and one card of these steps.</summary>
    public static Plan Plan(string sections, params string[] steps) =>
        TradeMachine.Plan($"{Situation}\n{sections}\n", "Card: Work\nFor: hand, mate\nDone when: engine runs.\n\n" + string.Concat(steps.Select((s, i) => $"{i + 1}. {s}\n")));

    /// <summary>The world at the end of the card.</summary>
    public static World Run(Rig rig)
    {
        rig.World.Begin(Rig.RunOf(rig.Plan, "Work"));
        rig.World.RunTo(SimTime.Never);
        return rig.World;
    }
}
