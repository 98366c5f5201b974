using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary><c>forward compartment, supply pickup</c>; <c>outside</c> is the outside.</summary>
public sealed record PortReference(string Item, string? Port, Span Span)
{
    public const string Outside = "outside";
}
