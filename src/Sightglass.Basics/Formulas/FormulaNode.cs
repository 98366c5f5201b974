using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>What the parser knows of a part it has read: what it is and where it stands in the text.</summary>
/// <param name="Sort">Value, condition, or a part with errors about which nothing more is said.</param>
/// <param name="IsZero">A plain 0: it fits any dimension.</param>
/// <param name="Level">For temperatures: a point on a scale, a difference, or not known.</param>
internal readonly record struct FormulaNode(
    NodeSort Sort, Dimension Dimension, int Start, int End, bool IsZero = false, TemperatureLevel Level = TemperatureLevel.Unknown)
{
    public bool IsUnknown => Sort == NodeSort.Unknown;

    public static FormulaNode Unknown(int start, int end) => new(NodeSort.Unknown, Dimension.One, start, end);

    public static FormulaNode Value(Dimension dimension, int start, int end) => new(NodeSort.Value, dimension, start, end);

    public static FormulaNode Condition(Dimension dimension, int start, int end) => new(NodeSort.Condition, dimension, start, end);
}
