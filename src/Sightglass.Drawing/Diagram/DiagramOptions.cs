using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>How a diagram is laid out and drawn.</summary>
public sealed record DiagramOptions
{
    /// <summary>Size of labels in pixels. Default 13.</summary>
    public double LabelSize { get; init; } = 13;

    /// <summary>Whether valves and other controls are switches that a keyboard reaches. Default true.</summary>
    public bool Interactive { get; init; } = true;

    /// <summary>Whether elements for hidden truth are in the drawing at all: false on a trainee's page. Default true.</summary>
    public bool Truth { get; init; } = true;

    /// <summary>The style of words that are so many times as large as labels; null where the look's own says it.</summary>
    internal string? FontSize(double factor = 1) => LabelSize == 13 && factor == 1 ? null : $"font-size:{SvgNumber.Format(LabelSize * factor)}px";
}
