using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A permission to be in a dangerous place, with its owner.</summary>
public sealed record Protection(string Name, Span Span, string AskedOf, string Text);
