using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>Reads an author's files into trees, beside each other: the same trees and findings, in the order of the files, as one after the other.</summary>
internal static class YamlFiles
{
    /// <summary>The documents of all files.</summary>
    public static IEnumerable<YamlNode> Read(IReadOnlyList<SourceText> files, Findings found)
    {
        if (files.Count < 2)
        {
            return OneByOne(files, found);
        }

        FileRead[] read = [.. files.Select(f => Task.Run(() => new FileRead(f, found.Limits))).ToArray().Select(t => t.GetAwaiter().GetResult())];
        return read.Sum(f => (long)f.Nodes) <= found.Limits.Nodes ? read.SelectMany(f => f.Take(found)) : OneByOne(files, found);
    }

    /// <summary>Where they hold more than a book may, which part is left out follows from their order.</summary>
    private static IEnumerable<YamlNode> OneByOne(IReadOnlyList<SourceText> files, Findings found)
    {
        YamlFile file = new(new YamlBudget(found.Limits), found);
        return files.SelectMany(f => file.Read(f));
    }

    /// <summary>One file, read by itself.</summary>
    private sealed class FileRead
    {
        private readonly DiagnosticList _notes = [];
        private readonly Findings _found;
        private readonly YamlNode[] _documents;

        public FileRead(SourceText file, YamlLimits limits)
        {
            _found = new(_notes, limits);
            YamlBudget budget = new(limits);
            _documents = [.. new YamlFile(budget, _found).Read(file)];
            Nodes = budget.Taken;
        }

        /// <summary>Nodes that it took, those of attempts that failed included.</summary>
        public int Nodes { get; }

        public YamlNode[] Take(Findings all)
        {
            all.Join(_found, _notes);
            return _documents;
        }
    }
}
