using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>
/// Reads formulas: numbers with units, + − * /, parentheses, <c>min() max() abs()</c>, comparisons, <c>and or not</c>, and names that are
/// phrases of words, of which the longest in scope is taken.
/// </summary>
/// <remarks>
/// A tight fraction below one before a unit is one number: <c>1/4 in</c> is a quarter of an inch, <c>1 / 4 in</c> a division.
/// A plain 0 fits every dimension but temperature. Pressures are measured from the air around: <c>psia</c> is refused.
/// </remarks>
public static class FormulaParser
{
    /// <summary>Characters a formula may have.</summary>
    public const int LongestText = 10_000;

    /// <summary>How deep parentheses, functions and <c>not</c> may be nested, and how many operands may wait at once.</summary>
    public const int DeepestNesting = 64;

    /// <summary>Reads a formula; never throws for what is written.</summary>
    /// <param name="text">The formula.</param>
    /// <param name="span">Where it stands, for messages.</param>
    /// <param name="scope">The names it may use.</param>
    /// <param name="found">Takes F001…F019, as many as can be told at once.</param>
    /// <param name="expected">What it has to be.</param>
    /// <returns>The formula, or null where there was an error.</returns>
    public static Formula? Parse(string text, Span span, INameScope scope, DiagnosticList found, FormulaKind expected)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(scope);
        ArgumentNullException.ThrowIfNull(found);
        FormulaMessages messages = new(text, span, found);
        if (text.Length > LongestText)
        {
            messages.TooLong(LongestText);
            return null;
        }

        FormulaProgramBuilder program = new();
        FormulaChecks checks = new(messages);
        FormulaNode node = new FormulaReader(text, scope, program, checks, messages).ReadAll();
        checks.Whole(node, expected);
        if (messages.Errors == 0 && program.MaximumDepth > DeepestNesting)
        {
            messages.TooDeep(node.Start, node.End, DeepestNesting);
        }

        Dimension dimension = node.IsZero && expected.Dimension is { } d ? d : node.Dimension;
        return messages.Errors == 0 ? new(text.Trim(), dimension, node.Sort == NodeSort.Condition, program.Build()) : null;
    }
}
