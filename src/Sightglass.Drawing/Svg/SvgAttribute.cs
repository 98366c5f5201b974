namespace Sightglass.Drawing.Svg;

/// <summary>One attribute of an element; a number is written in the shortest way, at most two decimals.</summary>
public readonly record struct SvgAttribute(string Name, string? Value)
{
    public static implicit operator SvgAttribute((string Name, string? Value) pair) => new(pair.Name, pair.Value);

    public static implicit operator SvgAttribute((string Name, double Value) pair) => new(pair.Name, SvgNumber.Format(pair.Value));
}
