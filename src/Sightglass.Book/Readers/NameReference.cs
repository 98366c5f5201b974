using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;

namespace Sightglass.Book.Readers;

/// <summary>A name used somewhere that must be declared elsewhere; checked when everything has been read.</summary>
/// <param name="Owner">The item that uses it, or empty.</param>
internal readonly record struct NameReference(NameUse Use, string Name, Span Span, string Owner);
