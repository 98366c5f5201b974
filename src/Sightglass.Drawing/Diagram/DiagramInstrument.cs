using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>A gauge or a control beside the pipes, joined to what it shows or moves by dashed lines.</summary>
/// <param name="Box">Its box, or the symbol's box for a control.</param>
/// <param name="Lines">Dashed lines.</param>
/// <param name="IsLine">A gauge on a line: a ring with its words beside it; otherwise a box.</param>
public sealed record DiagramInstrument(DiagramNode Node, Bounds Box, ImmutableArray<ImmutableArray<(double X, double Y)>> Lines, bool IsLine);
