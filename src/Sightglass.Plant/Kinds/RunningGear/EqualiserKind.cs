using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Springs;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>A bar that shares a load between what stands under its ends.</summary>
public sealed class EqualiserKind : CarriedKind
{
    private const string Lies = "lies";
    private const string Along = "along";

    public override KindSheet Sheet { get; } = Carried(
        "equaliser",
        "A bar that stands on two things with its ends and carries a third between them: it shares the load as a lever does, whatever the springs.",
        """
        The frame is carried by a spring that stands on it; under each end stands a spring that carries it, where there is only a pin or a saddle a stiff one (`stiffness: 1 MN/mm`). With one spring in the middle both ends carry alike, also when
        an axle stands high. Source: statics, the lever.
        """,
        Parameter.Choice(Lies, "Along the machine, from axle to axle, or across it, from side to side.", Along, Along, "across"));

    private protected override Freedoms Moves(Item item) => Freedoms.Heave | (item.Text(Lies) == Along ? Freedoms.Pitch : Freedoms.Roll);
}
