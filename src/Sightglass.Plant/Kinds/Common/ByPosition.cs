using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A number that follows from where a handle stands.</summary>
internal static class ByPosition
{
    /// <summary>The number, SI; null after an error: no handle, a position that it has not, a position left out.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">Whose numbers.</param>
    /// <param name="handle">The parameter that names the handle.</param>
    /// <param name="numbers">The parameter that gives a number for each of its positions.</param>
    public static SlotFunction? Of(PlanBuilder plan, Item item, string handle, string numbers)
    {
        ParameterValue? table = item.Parameters.GetValueOrDefault(numbers);
        ParameterValue? named = item.Parameters.GetValueOrDefault(handle);
        if (table is null || named is not { Names: [var name, ..] } || !plan.Book.Items.TryGetValue(name, out Item? by) || by.Positions.IsDefaultOrEmpty)
        {
            plan.Found.Error("P022", named?.Span ?? item.Span, $"nothing says what `{item.Name}` is set to", $"write `{handle}: NAME OF A HANDLE` and `{numbers}:` with a value for each of its positions");
            return null;
        }

        ImmutableSortedDictionary<string, double> map = table.ByPosition;
        string[] wrong = [.. map.Keys.Where(k => !by.Positions.Contains(k))];
        string[] missing = [.. by.Positions.Where(p => !map.ContainsKey(p))];
        foreach (string one in wrong)
        {
            plan.Found.Error("P008", table.Span, $"`{by.Name}` has no position `{one}`", Nearest.DidYouMean(one, by.Positions));
        }

        foreach (string one in missing)
        {
            plan.Found.Error("P009", table.Span, $"no value is given for `{one}` of `{by.Name}`", $"write `{one}:` with a value under `{numbers}`");
        }

        if (wrong.Length + missing.Length > 0)
        {
            return null;
        }

        double[] values = [.. by.Positions.Select(p => map[p])];
        Slot position = plan.PositionSlot(by);
        return s => values[(int)s[position.Index]];
    }
}
