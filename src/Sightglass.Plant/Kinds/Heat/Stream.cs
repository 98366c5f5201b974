using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Access;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>The stream of air or water over a heat exchanger: what moves it and what it goes through.</summary>
internal static class Stream
{
    public const string MovedBy = "moved by";
    public const string Through = "through";

    /// <summary>Share of the full stream, 0…1; null after an error.</summary>
    public static SlotFunction? Share(PlanBuilder plan, Item item)
    {
        SlotFunction[] movers = [.. Named(plan, item, MovedBy, Mover)];
        SlotFunction[] openings = [.. Named(plan, item, Through, Opening)];
        if (movers.Length < Count(item, MovedBy) || openings.Length < Count(item, Through))
        {
            return null;
        }

        return s =>
        {
            double moved = movers.Length == 0 ? 1 : 0;
            foreach (SlotFunction mover in movers)
            {
                moved += mover(s) / movers.Length;
            }

            foreach (SlotFunction opening in openings)
            {
                moved *= opening(s);
            }

            return moved;
        };
    }

    /// <summary>xⁿ, the same bits on every machine; 0 of 0 for any n above 0.</summary>
    public static double Power(double share, double exponent) =>
        share <= 0 ? (exponent == 0 ? 1 : 0) : share == 1 ? 1 : Portable.Pow(new Scalar(share), new Scalar(exponent)).V;

    private static int Count(Item item, string parameter) => item.Parameters.TryGetValue(parameter, out ParameterValue? value) ? value.Names.Length : 0;

    private static IEnumerable<SlotFunction> Named(PlanBuilder plan, Item item, string parameter, Func<PlanBuilder, Item, SlotFunction?> of)
    {
        if (!item.Parameters.TryGetValue(parameter, out ParameterValue? value))
        {
            yield break;
        }

        foreach (string name in value.Names)
        {
            if (plan.Book.Items.TryGetValue(name, out Item? named) && of(plan, named) is { } share)
            {
                yield return share;
                continue;
            }

            if (parameter == Through)
            {
                plan.Found.Error("P054", value.Span, $"the stream of `{item.Name}` does not go through `{name}`", "name a screen, a shutter or a window");
            }
            else
            {
                plan.Found.Error("P054", value.Span, $"`{name}` does not move the stream of `{item.Name}`", "name a fan, a transmitter, a relay, a switch or an engine");
            }
        }
    }

    private static SlotFunction? Mover(PlanBuilder plan, Item item)
    {
        if (item.Kind.Name == FanKind.Name)
        {
            return FanKind.Speed(plan, item);
        }

        if (item.Kind.Role == KindRole.Signal)
        {
            Slot told = Told.By(plan, item);
            return s => Math.Clamp(s[told.Index], 0, 1);
        }

        if (item.Positions.IsDefaultOrEmpty)
        {
            return null;
        }

        Slot position = plan.PositionSlot(item);
        return s => s[position.Index] > 0.5 ? 1 : 0;
    }

    private static SlotFunction? Opening(PlanBuilder plan, Item item) => item.Kind.Name switch
    {
        ScreenKind.Name => ScreenKind.Open(plan, item),
        ShutterKind.Name => ShutterKind.Open(plan, item),
        WindowKind.Name => WindowKind.Open(plan, item),
        _ => null,
    };
}
