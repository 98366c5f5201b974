using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>A file of entries that belong together, to be put into a book as it is.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes; it is not there yet.</param>
/// <param name="Heading">Comment lines at its top, without their signs.</param>
/// <param name="Additions">Its entries, under their sections in the order in which these first come.</param>
public sealed record NewFile(string Path, ImmutableArray<string> Heading, ImmutableArray<BookAddition> Additions)
{
    /// <summary>What is read back of it.</summary>
    internal YamlMap Tree => NodeText.Map([.. Additions.GroupBy(a => a.Section).Select(g => (g.Key, (YamlNode)NodeText.Map([.. g.Select(a => (a.Name, (YamlNode)a.Body))])))]);

    /// <summary>What it holds.</summary>
    public SourceText Source
    {
        get
        {
            StringBuilder text = new();
            foreach (string line in Heading)
            {
                text.Append("# ").Append(NodeText.OneLine(line)).Append('\n');
            }

            foreach (IGrouping<string, BookAddition> section in Additions.GroupBy(a => a.Section))
            {
                text.Append(NodeText.Key(section.Key, flow: false)).Append(":\n").AppendJoin("", section.Select(a => a.Lines()));
            }

            return new(Path, text.ToString());
        }
    }

    /// <summary><c>drills/a-compartment-leaks.yaml</c>: words of a name in a folder; with a number where such a file is there.</summary>
    /// <param name="folder">Of the book, where it is put.</param>
    /// <param name="name">Whose words it gets.</param>
    /// <param name="isThere">Whether the book has a file of that path.</param>
    /// <param name="ending">Of the file.</param>
    public static string PathOf(string folder, string name, Func<string, bool> isThere, string ending = ".yaml")
    {
        ArgumentNullException.ThrowIfNull(isThere);
        string words = FileWords.Of(name);
        return Enumerable.Range(1, int.MaxValue).Select(i => i == 1 ? $"{folder}/{words}{ending}" : $"{folder}/{words}-{i}{ending}").First(p => !isThere(p));
    }
}
