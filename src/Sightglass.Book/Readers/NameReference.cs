using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;

namespace Sightglass.Book.Readers;

/// <summary>A name used somewhere that must be declared elsewhere; checked when everything has been read.</summary>
/// <param name="Owner">For a position: the item whose parameter uses it.</param>
internal readonly record struct NameReference(NameUse Use, string Name, Span Span, string Owner);
