using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>One node of an author's file with the place where it stands.</summary>
public abstract record YamlNode(Span Span)
{
    /// <summary>What it is, as a message says it: <c>a text</c>, <c>a list</c>, <c>a map of keys</c>, <c>nothing</c>.</summary>
    public abstract string Described { get; }
}
