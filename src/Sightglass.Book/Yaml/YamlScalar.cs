using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>A single value, always as text: what it means is decided by who asks for it.</summary>
/// <param name="Span">With the quotes, where there are any.</param>
/// <param name="Value">Without quotes, escapes resolved.</param>
/// <param name="IsPlain">Written without quotes and not as a block.</param>
public sealed record YamlScalar(Span Span, string Value, bool IsPlain) : YamlNode(Span)
{
    /// <summary>Nothing was written, or <c>null</c> or <c>~</c> without quotes.</summary>
    public bool IsNull => IsPlain && Value is "" or "null" or "~";

    public override string Described => IsNull ? "nothing" : "a text";
}
