using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>A group of parts written once and used several times: its texts have holes, <c>{name}</c>, that each use fills.</summary>
/// <param name="Parameters">What a use says, with what holds where it says nothing (null: it must).</param>
/// <param name="Parts">By section (items, facts, signs, hazards) the entries as written.</param>
/// <param name="Ports">What it shows to the outside: name → part, or part and port.</param>
internal sealed record Assembly(
    string Name,
    Span Span,
    ImmutableDictionary<string, YamlNode?> Parameters,
    ImmutableDictionary<string, ImmutableArray<YamlEntry>> Parts,
    ImmutableArray<YamlEntry> Ports)
{
    /// <summary>It names parameters that it does not have: reported, and not worth writing out.</summary>
    public bool IsBroken { get; init; }

    /// <summary>The parameter that every assembly has: the name of the use.</summary>
    public const string NameOfUse = "name";

    /// <summary>The key by which an entry of <c>items</c> is the use of an assembly.</summary>
    public const string Key = "assembly";

    /// <summary>The sections an assembly may have.</summary>
    public static readonly ImmutableArray<string> Sections = ["items", "facts", "signs", "hazards"];

    /// <summary>Keys of a use that are no parameters.</summary>
    public static readonly ImmutableArray<string> KeysOfUse = [Key, "at", "changes"];

    public static bool IsUse(YamlEntry entry) => entry.Value is YamlMap map && map.Find(Key) is not null;
}
