using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>The body of a vehicle on its springs.</summary>
public sealed class BodyKind : CarriedKind
{
    public override KindSheet Sheet { get; } = Carried(
        "body",
        "The body of a vehicle, which rests on springs.",
        """
        Rigid, and moves a little: down, in pitch and in roll. Its `position` is the centre of what it weighs alone; tanks, boxes and the like say `lies on: NAME` and add what is in them, where they are. Springs can only press, so one from which
        it lifts carries nothing. Level track: grade, cant, pull at the drawbar and movement are not taken into account. What is in a tank counts at the tank's position and is told on in steps of 50 kg. Source: statics, R = k·(z + φ·x + θ·y) with the sums of forces and moments of
        each body at nothing.
        """);
}
