using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Where an addition is written: behind the other entries of its section, where a file has it; else in the file called after the section.</summary>
internal static class AdditionEdit
{
    /// <summary>The file of a section that no file has yet.</summary>
    public static string NewFile(string section) => section.Replace(' ', '-') + ".yaml";

    /// <summary>The file that gets it and the edit; null where every file is written in a way that cannot be edited, or none has the section.</summary>
    public static (FileText File, TextEdit Edit)? Find(BookAddition addition, IEnumerable<FileText> files)
    {
        FileText[] all = [.. files];
        foreach (FileText file in all)
        {
            if (Roots(file).Select(r => r.Find(addition.Section)).FirstOrDefault(s => s is not null) is { } section)
            {
                return section.Value is YamlMap { Entries.Length: > 0 } map
                    ? (file, file.Insert(map, addition.Name, addition.Body))
                    : (file, file.Replace(section, NodeText.Map((addition.Name, addition.Body))));
            }
        }

        return Array.Find(all, f => f.Source.Path == NewFile(addition.Section)) is { } called && Roots(called).FirstOrDefault() is { Entries.Length: > 0 } root
            ? (called, called.Insert(root, addition.Section, NodeText.Map((addition.Name, addition.Body))))
            : null;
    }

    /// <summary>Whether a section has an entry of that name.</summary>
    public static bool Has(BookAddition addition, IEnumerable<FileText> files) =>
        files.SelectMany(Roots).Any(r => r.Find(addition.Section)?.Value is YamlMap map && map.Find(addition.Name) is not null);

    /// <summary>A file that holds nothing but the addition.</summary>
    public static SourceText Alone(BookAddition addition)
    {
        StringBuilder text = new StringBuilder(NodeText.Key(addition.Section, flow: false)).Append(':')
            .Append(NodeText.AfterColon(NodeText.Map((addition.Name, addition.Body)), flow: false, 2)).Append('\n');
        return new(NewFile(addition.Section), text.ToString());
    }

    private static IEnumerable<YamlMap> Roots(FileText file) => file.Documents.OfType<YamlMap>();
}
