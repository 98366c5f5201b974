using System.Xml.Linq;

namespace Sightglass.Architecture.Tests;

/// <summary>One file of texts of a language, as its entries stand in it.</summary>
/// <param name="Project">Whose texts they are: the last word of a project's name, or a part of one.</param>
internal sealed record SpokenWords(string File, string Project, IReadOnlyList<(string Key, string Text)> Entries)
{
    public static IReadOnlyList<SpokenWords> Of(string language) =>
    [
        .. RepositoryFiles.All.Where(f => f.StartsWith($"src/Sightglass.Basics/Language/Words/{language}/", StringComparison.Ordinal)).Select(f =>
            new SpokenWords(f, Path.GetFileNameWithoutExtension(f), [.. XDocument.Parse(RepositoryFiles.Read(f)).Root!.Elements("data").Select(d => (d.Attribute("name")!.Value, d.Element("value")!.Value))])),
    ];
}
