using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Letters of a file that are replaced, with what that means: one node of its tree that becomes another one.</summary>
internal sealed record TextEdit(int Start, int End, string Text, YamlNode Old, YamlNode New)
{
    public string Apply(string text)
    {
        string ends = text.Contains("\r\n", StringComparison.Ordinal) ? Text.Replace("\n", "\r\n", StringComparison.Ordinal) : Text;
        return string.Concat(text.AsSpan(0, Start), ends, text.AsSpan(End));
    }

    /// <summary>Whether a tree is the file's own with the one node replaced, and nothing else.</summary>
    public bool Explains(IReadOnlyList<YamlNode> before, IReadOnlyList<YamlNode> after) =>
        before.Count == after.Count && before.Zip(after).All(d => Same(d.First, d.Second));

    private bool Same(YamlNode a, YamlNode b)
    {
        a = ReferenceEquals(a, Old) ? New : a;
        return (a, b) switch
        {
            (YamlScalar s, YamlScalar t) => s.Value.Trim() == t.Value.Trim() && s.IsNull == t.IsNull,
            (YamlList s, YamlList t) => s.Items.Length == t.Items.Length && s.Items.Zip(t.Items).All(i => Same(i.First, i.Second)),
            (YamlMap s, YamlMap t) => s.Entries.Length == t.Entries.Length
                && s.Entries.Zip(t.Entries).All(e => e.First.Name == e.Second.Name && Same(e.First.Value, e.Second.Value)),
            _ => false,
        };
    }
}
