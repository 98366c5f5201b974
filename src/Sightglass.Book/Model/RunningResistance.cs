using System.Collections.Immutable;

namespace Sightglass.Book.Model;

/// <summary>What a vehicle resists on straight and level track, by a form of the trade.</summary>
/// <param name="Form">One of <see cref="Forms"/>; null where the book gives numbers of its own.</param>
/// <param name="Own">Pounds for each short ton, as the trade prints them: constant, by w tons an axle, by miles an hour, by square feet of front and their square; empty where a form is named.</param>
/// <param name="Front">m²; null where the form has one number for the whole front.</param>
public sealed record RunningResistance(string? Form, ImmutableArray<double> Own, double? Front)
{
    public const string Modified = "modified";

    /// <summary>Forms that a book may name; all but the last ask for the front.</summary>
    public static ImmutableArray<string> Forms { get; } = ["passenger 1926", "locomotive 1926", "freight 1926", Modified];
}
