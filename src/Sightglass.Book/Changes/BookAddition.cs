using System.Collections.Immutable;
using System.Text;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>One more entry of a section that holds named ones, such as <c>pictures</c>.</summary>
/// <param name="Section">A section whose entries are maps.</param>
/// <param name="Name">Not yet in that section.</param>
/// <param name="Body">What is written under the name.</param>
public sealed record BookAddition(string Section, string Name, YamlMap Body)
{
    /// <summary>Comment lines for whoever goes on with it, each over the key that it is about; at the end where the entry has no such key.</summary>
    public ImmutableArray<(string Key, string Says)> Notes { get; init; } = [];

    /// <summary>The entry as the lines of a file in which it stands under its section.</summary>
    internal string Lines()
    {
        StringBuilder text = new();
        text.Append("  ").Append(NodeText.Key(Name, flow: false)).Append(":\n");
        foreach (YamlEntry entry in Body.Entries)
        {
            Comment(text, Notes.Where(n => n.Key == entry.Name));
            text.Append("    ").Append(NodeText.Key(entry.Name, flow: false)).Append(':').Append(NodeText.AfterColon(entry.Value, flow: false, 6)).Append('\n');
        }

        Comment(text, Notes.Where(n => Body.Find(n.Key) is null));
        return text.ToString();
    }

    private static void Comment(StringBuilder text, IEnumerable<(string Key, string Says)> notes)
    {
        foreach ((_, string says) in notes)
        {
            text.Append("    # ").Append(NodeText.OneLine(says)).Append('\n');
        }
    }
}
