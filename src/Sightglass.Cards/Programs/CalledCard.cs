using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>A card of the book as read for a call, with what was wrong in reading it.</summary>
internal sealed record CalledCard(Card Card, DiagnosticList Found);
