using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Readers;

namespace Sightglass.Book.Kinds;

/// <summary>One parameter of a kind.</summary>
/// <param name="Name">As written in the book, lower case words.</param>
/// <param name="Type">What may be written.</param>
/// <param name="Dimension">For quantities.</param>
/// <param name="Doc">One sentence.</param>
/// <param name="Default">As written, such as <c>0.62</c> or <c>20 mm</c>; null when required or truly optional (see <paramref name="Required"/>).</param>
/// <param name="Minimum">As written, inclusive.</param>
/// <param name="Maximum">As written, inclusive.</param>
/// <param name="Choices">For <see cref="ParameterType.Choice"/>.</param>
/// <param name="IsWhole">Of a quantity without a unit: a count or a number by which something is called; a range of it draws whole numbers, each as likely.</param>
public sealed record KindParameter(
    string Name,
    ParameterType Type,
    Dimension Dimension,
    string Doc,
    bool Required = false,
    string? Default = null,
    string? Minimum = null,
    string? Maximum = null,
    ImmutableArray<string> Choices = default,
    bool IsWhole = false)
{
    /// <summary>Whether a number (SI) is within its limits, and whole where it must be.</summary>
    public bool Takes(double si) => ParameterTexts.IsWithin(this, si);
}
