using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>A scale at the side of the diagram: a gauge of the book, or something that nobody can read.</summary>
/// <param name="Name">As in the book.</param>
/// <param name="Called">Words shown; null for what lies on the ground.</param>
/// <param name="ReadAt">Where it is read; null where nobody can.</param>
/// <param name="Unit">Of the scale.</param>
/// <param name="Minimum">Of the scale, SI.</param>
/// <param name="Maximum">Of the scale, SI.</param>
/// <param name="Resolution">SI.</param>
/// <param name="Item">The gauge, or null where nobody can read it.</param>
/// <param name="Truths">Signals whose sum over <paramref name="TruthDivisor"/> is what ought to be shown.</param>
public sealed record LiveGauge(string Name, string? Called, string? ReadAt, Unit Unit, double Minimum, double Maximum, double Resolution, Item? Item, Signal[] Truths, double TruthDivisor)
{
    /// <summary>Share of air in the line of liquid whose pressure it shows; null for any other gauge. Air that is shut in is under pressure, too, and nobody reads that.</summary>
    public Signal? Air { get; init; }

    /// <summary>Which it is among those of a session.</summary>
    public int Number { get; init; }

    /// <summary>The system at whose diagram it stands; null where the book has no living system.</summary>
    public string? System { get; init; }

    /// <summary>Index of the vehicle that it is on.</summary>
    public int Vehicle { get; init; }

    public string Label => Say.Book(Called) ?? Say.It("On the ground");

    /// <summary>Where it is read, or that nobody can.</summary>
    public string Where => Say.Book(ReadAt) ?? Say.It("nobody can read this");

    public double? NormalFrom => Item?.Reading?.NormalFrom;

    public double? NormalTo => Item?.Reading?.NormalTo;

    /// <summary>Truth apart from the reading by more than this is told, SI.</summary>
    public double Misleading => Math.Max(Resolution * 2, (Maximum - Minimum) * 0.04);
}
