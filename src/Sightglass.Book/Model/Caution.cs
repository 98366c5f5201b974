using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A caution with its signal word.</summary>
public sealed record Caution(SignalWord Word, string Text, Span Span);
