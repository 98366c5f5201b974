using System.Collections.Immutable;

namespace Sightglass.Drawing.Loads;

/// <summary>What wheels carry at one moment, kg.</summary>
public sealed record LoadState
{
    public static readonly LoadState Unknown = new();

    /// <summary>Hidden truth: what each wheel presses with.</summary>
    public ImmutableDictionary<LoadWheel, double> Real { get; init; } = ImmutableDictionary<LoadWheel, double>.Empty;

    /// <summary>What a scale under a wheel shows, where there is one.</summary>
    public ImmutableDictionary<LoadWheel, double> Read { get; init; } = ImmutableDictionary<LoadWheel, double>.Empty;

    /// <summary>Hidden truth: what of each thing that lies on the body is there.</summary>
    public ImmutableDictionary<string, double> Masses { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Hidden truth: springs that are not whole, with what is wrong in a word of the kind's sheet.</summary>
    public ImmutableSortedDictionary<string, string> Wrong { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Whether hidden truth is shown.</summary>
    public bool ShowTruth { get; init; } = true;

    /// <summary>What is known of a wheel: the truth where it is shown, else what a scale shows; null for nothing.</summary>
    public double? Known(LoadWheel wheel) => ShowTruth && Real.TryGetValue(wheel, out double real) ? real : Read.TryGetValue(wheel, out double read) ? read : null;
}
