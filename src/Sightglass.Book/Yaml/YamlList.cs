using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>A list in the order of the file.</summary>
public sealed record YamlList(Span Span, ImmutableArray<YamlNode> Items) : YamlNode(Span)
{
    public override string Described => "a list";
}
