using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary><c>forward compartment, supply pickup</c>; <c>outside</c> is the outside, <c>frame</c> the metal of the vehicles, which the rails join.</summary>
public sealed record PortReference(string Item, string? Port, Span Span)
{
    public const string Outside = "outside";
    public const string Frame = "frame";

    /// <summary>Whether it names an item, and not what every machine stands in.</summary>
    public bool IsItem => Item is not (Outside or Frame);
}
