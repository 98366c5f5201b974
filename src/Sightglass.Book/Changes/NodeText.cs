using System.Text;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Writes new keys with what they hold, in the author's way: line by line in a block, in one line between braces.</summary>
internal static class NodeText
{
    /// <summary>A map of one key, to be put into a book.</summary>
    public static YamlMap Map(params ReadOnlySpan<(string Key, YamlNode Value)> entries)
    {
        var all = System.Collections.Immutable.ImmutableArray.CreateBuilder<YamlEntry>(entries.Length);
        foreach ((string key, YamlNode value) in entries)
        {
            all.Add(new(Text(key), value));
        }

        return new(default, all.ToImmutable());
    }

    public static YamlScalar Text(string text) => new(default, text, IsPlain: false);

    /// <summary>What follows a key's colon.</summary>
    /// <param name="value">What the key holds.</param>
    /// <param name="flow">Between braces.</param>
    /// <param name="indent">Blanks before what hangs on the key, in a block.</param>
    public static string AfterColon(YamlNode value, bool flow, int indent)
    {
        StringBuilder text = new();
        Value(text, value, flow, indent);
        return text.ToString();
    }

    public static string Key(string name, bool flow) => ScalarText.Write(name, ScalarStyle.Plain, flow, 0).Replace(">- ", "", StringComparison.Ordinal);

    /// <summary>A text as a line of a comment: signs that cannot be seen, or that end a line, are blanks.</summary>
    public static string OneLine(string text) => string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' ? ' ' : c));

    private static void Value(StringBuilder text, YamlNode value, bool flow, int indent)
    {
        switch (value)
        {
            case YamlScalar s:
                text.Append(' ').Append(ScalarText.Write(s.Value, ScalarStyle.Plain, flow, indent));
                break;
            case YamlMap map when flow:
                text.Append(" { ").AppendJoin(", ", map.Entries.Select(e => Key(e.Name, flow: true) + ":" + AfterColon(e.Value, flow: true, 0))).Append(" }");
                break;
            case YamlMap map:
                foreach (YamlEntry e in map.Entries)
                {
                    text.Append('\n').Append(' ', indent).Append(Key(e.Name, flow: false)).Append(':');
                    Value(text, e.Value, flow: false, indent + 2);
                }

                break;
            case YamlList list when flow:
                text.Append(" [").AppendJoin(", ", list.Items.Select(i => AfterColon(i, flow: true, 0).TrimStart())).Append(']');
                break;
            case YamlList list:
                foreach (YamlNode item in list.Items)
                {
                    text.Append('\n').Append(' ', indent).Append("- ").Append(Item(item, indent + 2));
                }

                break;
        }
    }

    /// <summary>An element of a block list: its first key stands behind the hyphen.</summary>
    public static string Item(YamlNode item, int indent) => AfterColon(item, flow: false, indent).TrimStart();
}
