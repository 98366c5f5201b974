using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>An entry of a section, such as a recording, of which some keys are to say something else. What it says beside that stays as its author wrote it.</summary>
/// <param name="Section">A section whose entries are maps.</param>
/// <param name="Name">In that section.</param>
/// <param name="Was">What it said when the change was begun, in the words of whoever changes it.</param>
/// <param name="Becomes">The same with the change: only what differs between the two is written.</param>
public sealed record EntryChange(string Section, string Name, YamlMap Was, YamlMap Becomes);
