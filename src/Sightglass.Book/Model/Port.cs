using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A point of a store where a path ends: height above the store's floor and place along it, metres.</summary>
/// <param name="Height">Above the floor of the store.</param>
/// <param name="X">Class axes, or null for the middle of the store.</param>
/// <param name="Y">Class axes, or null for the middle of the store.</param>
public sealed record Port(string Name, Span Span, double Height, double? X, double? Y);
