using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>A diagram as data, pixels, y downwards.</summary>
public sealed record DiagramLayout
{
    public required DiagramInput Input { get; init; }

    public required Bounds Sheet { get; init; }

    public required ImmutableArray<DiagramBody> Bodies { get; init; }

    public required ImmutableArray<DiagramPart> Parts { get; init; }

    public required ImmutableArray<DiagramPipe> Pipes { get; init; }

    /// <summary>What is joined crosswise.</summary>
    public ImmutableArray<DiagramCross> Crosses { get; init; } = [];

    /// <summary>Where pipes join.</summary>
    public required ImmutableArray<(double X, double Y)> Dots { get; init; }

    public required ImmutableArray<DiagramGlass> Glasses { get; init; }

    public required ImmutableArray<DiagramInstrument> Instruments { get; init; }

    public required ImmutableArray<DiagramOpenEnd> OpenEnds { get; init; }

    public required ImmutableArray<DiagramLabel> Labels { get; init; }

    /// <summary>The layout of a network: along the lines that go through a vehicle from end to end where there are some, else from tanks by way of machines.</summary>
    public static DiagramLayout Of(DiagramInput input, DiagramOptions? options = null) =>
        input.Nodes.Any(n => n.IsEnd) && !input.Nodes.Any(n => n.Role == DiagramRole.Machine)
            ? new ThroughPlanner(input, options ?? new()).Plan()
            : new DiagramPlanner(input, options ?? new()).Plan();
}
