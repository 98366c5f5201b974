namespace Sightglass.Book.Yaml;

/// <summary>One key of a map with its value.</summary>
public sealed record YamlEntry(YamlScalar Key, YamlNode Value)
{
    public string Name => Key.Value;
}
