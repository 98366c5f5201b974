using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.Training.Debrief;

/// <summary>A number of the truth that a debrief looks at, with the instruments that tell of it.</summary>
/// <param name="Name">As the book's formulas name it: <c>spilled of aft compartment</c>; of an instrument its name.</param>
/// <param name="Unit">In which it is shown.</param>
/// <param name="Truth">SI.</param>
/// <param name="Instrument">The instrument that ought to show it; null where nobody can read it.</param>
public sealed record DebriefSignal(string Name, Unit Unit, Signal Truth, Item? Instrument)
{
    /// <summary>The least step that is worth showing, SI; null for as many digits as there are.</summary>
    public double? Resolution => Instrument?.Reading?.Resolution;

    /// <summary>The store at which an instrument stands; null for one that stands at none.</summary>
    public string? StandsAt => Instrument is { Reading.Formula: null } glass && glass.Parameters.TryGetValue("of", out ParameterValue? of) ? of.Names.FirstOrDefault(of.Text) : null;

    /// <summary>Whether it tells how fast something goes, not what there is: such numbers jump with every handle.</summary>
    public bool IsRate => Unit.Dimension == Dimension.VolumeFlow || Unit.Dimension == Dimension.MassFlow;

    /// <summary>Whether what the instrument shows is so far from what is that it misleads.</summary>
    public bool Misleads(double shown, double truth) => Instrument?.Reading is { } r && Math.Abs(shown - truth) > Math.Max(2 * r.Resolution, 0.04 * (r.Maximum - r.Minimum));
}
