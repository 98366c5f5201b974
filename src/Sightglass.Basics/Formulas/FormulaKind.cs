using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>What a formula has to be where it stands.</summary>
public readonly record struct FormulaKind
{
    private FormulaKind(bool takesValues, bool takesConditions, Dimension? dimension)
    {
        (TakesValues, TakesConditions, Dimension) = (takesValues, takesConditions, dimension);
    }

    /// <summary>A condition or a value of any dimension.</summary>
    public static FormulaKind Any { get; } = new(true, true, null);

    /// <summary>A value of any dimension.</summary>
    public static FormulaKind AnyValue { get; } = new(true, false, null);

    /// <summary>Something that is true or false.</summary>
    public static FormulaKind Condition { get; } = new(false, true, null);

    public bool TakesValues { get; }

    public bool TakesConditions { get; }

    /// <summary>The one dimension that is taken, or null for all.</summary>
    public Dimension? Dimension { get; }

    /// <summary>A value of this dimension.</summary>
    public static FormulaKind Value(Dimension dimension) => new(true, false, dimension);
}
