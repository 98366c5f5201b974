using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>
/// The names a formula may use. A name is a phrase of words, such as <c>volume of forward compartment</c>;
/// the parser always takes the longest phrase that is in scope.
/// </summary>
public interface INameScope
{
    /// <summary>Every name, for 'did you mean'.</summary>
    IEnumerable<string> Names { get; }

    /// <summary>Characters beyond which no phrase is looked up.</summary>
    int LongestName => 200;

    /// <summary>Looks a name up (words joined by one space, case as written).</summary>
    bool TryGet(string name, out FormulaName found);
}

/// <summary>A name resolved: what it measures and the number by which the evaluator finds its value.</summary>
/// <param name="Name">As declared.</param>
/// <param name="Dimension">What it measures; a truth value has <see cref="IsCondition"/>.</param>
/// <param name="Id">An index chosen by the scope, handed back to <see cref="IFormulaValues{T}"/>.</param>
/// <param name="IsCondition">True for facts: their value is a margin that is ≥ 0 when the fact holds.</param>
/// <param name="PreferredUnit">The unit in which its values are shown.</param>
public readonly record struct FormulaName(string Name, Dimension Dimension, int Id, bool IsCondition = false, Unit? PreferredUnit = null);
