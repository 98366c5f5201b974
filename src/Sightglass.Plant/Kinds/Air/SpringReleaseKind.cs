using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>The pull by which a person lets a spring brake off without air.</summary>
public sealed class SpringReleaseKind : KindBuilder
{
    private const string Brakes = "releases";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "spring brake release",
        Purpose = "Lets spring brakes off by hand, once: pulled, they press nothing until their air has come back and armed them again.",
        Details = "Nothing holds a vehicle whose parking brake was released by hand: chock or couple first. Armed again by the first brake's pressure. Source: common practice.",
        Role = KindRole.Control,
        Symbol = "handle",
        Positions = ["armed", "pulled"],
        Parameters =
        [
            new(Brakes, ParameterType.Items, Dimension.One, "The spring brakes it lets off.", Required: true),
            Parameter.Needed("arms at", Dimension.Pressure, "Over the atmosphere: air of so much in the brake arms it again.", "1 psi", "200 psi"),
        ],
        Faults = [new("stuck", "It does not move from where it stands.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        ParameterValue named = item.Parameters[Brakes];
        foreach (string name in named.Names)
        {
            if (!plan.Book.Items.TryGetValue(name, out Item? brake) || brake.Kind.Name != "spring brake" || plan.FindStore(name) is not { } chamber)
            {
                plan.Found.Error("P024", named.Span, $"`{name}` is no spring brake that `{item.Name}` could release", Nearest.DidYouMean(name, plan.Book.Items.Values.Where(i => i.Kind.Name == "spring brake").Select(i => i.Name)) ?? "name a spring brake");
                continue;
            }

            Slot off = SpringBrakeKind.ReleasedByHand(plan, brake);
            plan.AddPulse(new($"", position, s => s[position.Index] > 0.5, off, _ => 1));
            double arms = Physical.Atmosphere + item.Get("arms at");
            plan.AddSwitch(new(
                $"{name} is armed again.", chamber.Network, new PotentialSignal(chamber.Network, chamber.Store.First, 1, -arms), s => s[off.Index] > 0.5, off, new ConstantSignal(0)));
        }

        plan.AddPulse(new($"", position, s => s[position.Index] > 0.5, position, _ => 0));
    }
}
