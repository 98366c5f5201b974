using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>One more entry of a section that holds named ones, such as <c>pictures</c>.</summary>
/// <param name="Section">A section whose entries are maps.</param>
/// <param name="Name">Not yet in that section.</param>
/// <param name="Body">What is written under the name.</param>
public sealed record BookAddition(string Section, string Name, YamlMap Body);
