using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;

namespace Sightglass.Drawing.Loads;

/// <summary>What a plan of loads shows, in sentences.</summary>
public static class LoadWords
{
    /// <summary>How it is read.</summary>
    public static string Key(LoadInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        double[] most = [.. input.Axles.Select(a => a.Most ?? 0).Distinct()];
        string limit = most is [> 0] ? Say.With($"The line across it: the {Text(input, most[0])} that a wheel may carry.") : most.Any(m => m > 0) ? Say.It("The line across it: what that wheel may carry.") : "";
        string[] said = [Say.It("From above: each bar is the load of a wheel."), limit, input.Springs.IsEmpty ? "" : Say.It("Rings: springs.")];
        return string.Join(' ', said.Where(s => s.Length > 0));
    }

    /// <summary>Hidden truth: springs that are not whole; nothing where truth is not shown.</summary>
    public static ImmutableArray<string> Wrong(LoadInput input, LoadState state)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(state);
        return state.ShowTruth ? [.. input.Springs.Where(s => state.Wrong.ContainsKey(s.Id)).Select(s => Say.With($"{s.Label}: {Say.Word(state.Wrong[s.Id])}."))] : [];
    }

    /// <summary>What is out of order, or that nothing is; empty where nothing is known.</summary>
    public static ImmutableArray<string> Of(LoadInput input, LoadState state)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(state);
        List<string> said = [];
        foreach (LoadAxle axle in input.Axles)
        {
            if (state.Known(new(axle.Id, true)) is not { } right || state.Known(new(axle.Id, false)) is not { } left)
            {
                continue;
            }

            if (axle.Most is { } most && Math.Max(right, left) > most)
            {
                string side = right > left ? Say.It("right") : Say.It("left");
                said.Add(Say.With($"{axle.Label}, {side}: {Text(input, Math.Max(right, left) - most)} more than it may carry."));
            }

            if (axle.Difference is { } may && Math.Abs(right - left) > may)
            {
                said.Add(right < left ? Say.With($"{axle.Label}: its right wheel carries {Text(input, left - right)} less than its left one.") : Say.With($"{axle.Label}: its left wheel carries {Text(input, right - left)} less than its right one."));
            }
        }

        if (said.Count == 0 && input.Axles.Any(a => a is { Most: not null, Difference: not null } && state.Known(new(a.Id, true)) is not null))
        {
            said.Add(Say.It("No wheel carries more than it may, and the two of each axle are alike."));
        }

        return [.. said];
    }

    private static string Text(LoadInput input, double kilograms) => QuantityFormat.Text(kilograms, input.Unit, input.Unit.Factor / (input.Unit.Symbol == "t" ? 10 : 1));
}
