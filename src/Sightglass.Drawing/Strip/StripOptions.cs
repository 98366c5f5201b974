using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Strip;

/// <summary>What a strip shows.</summary>
public sealed record StripOptions
{
    /// <summary>Where the person stands, or null for nobody.</summary>
    public string? CurrentPlace { get; init; }

    /// <summary>The item whose label is inverse, or null.</summary>
    public string? SelectedItem { get; init; }

    /// <summary>Places where the person has been: filled on the tape.</summary>
    public ImmutableHashSet<string> Visited { get; init; } = [];

    /// <summary>Pixels a metre. Default 56; below 10 silhouettes only, below 30 only the current labels, details from 30.</summary>
    public double Scale { get; init; } = 56;

    /// <summary>Size of labels in pixels. Default 13, the least on a screen.</summary>
    public double LabelSize { get; init; } = 13;

    /// <summary>Sides to show; all four by default.</summary>
    public ImmutableHashSet<Side> Sides { get; init; } = [Side.Right, Side.Rear, Side.Left, Side.Front];

    /// <summary>Which items get a flag. Default all that can be met from the ground, and those inside where the person is.</summary>
    public StripLabels Labels { get; init; } = StripLabels.All;

    /// <summary>Most tiers of flags above and below. Where more would be needed, flags of other places are left out. Default 10.</summary>
    public int MostTiers { get; init; } = 10;

    /// <summary>Whether the hazards of ground places are hatched. Default true.</summary>
    public bool Hazards { get; init; } = true;

    /// <summary>Whether the tape with its stops is drawn. Default true.</summary>
    public bool Tape { get; init; } = true;

    /// <summary>Whether items and stops are buttons that a keyboard reaches. Default true.</summary>
    public bool Interactive { get; init; } = true;

    /// <summary>Metres a second for the seconds between stops.</summary>
    public double WalkingSpeed { get; init; } = Walk.WalkRoute.OrdinarySpeed;

    /// <summary>Words shown under the person, or empty.</summary>
    public string You { get; init; } = Say.It("You are here");
}
