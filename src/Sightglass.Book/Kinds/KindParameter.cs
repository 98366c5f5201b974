using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

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
public sealed record KindParameter(
    string Name,
    ParameterType Type,
    Dimension Dimension,
    string Doc,
    bool Required = false,
    string? Default = null,
    string? Minimum = null,
    string? Maximum = null,
    ImmutableArray<string> Choices = default);
