using System.Collections.Immutable;
using System.Text.Json;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>Lying cylinders joined at their floors by orifices; SI. The law stands in Data/README.md.</summary>
public sealed record CylinderFile(
    ImmutableArray<CylinderRow> Tanks,
    ImmutableArray<CylinderOrificeRow> Orifices,
    double EpsM,
    ImmutableArray<InflowRow> Inflow,
    double EndS,
    double EveryS)
{
    private static readonly JsonSerializerOptions s_options = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    public static CylinderFile Parse(string json) =>
        JsonSerializer.Deserialize<CylinderFile>(json, s_options) ?? throw new FormatException("The file holds nothing.");
}
