using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads the questions of an item: a list, each with its answer.</summary>
internal static class QuestionReader
{
    public static ImmutableArray<Question> Read(YamlNode? node, ReadContext context)
    {
        switch (node)
        {
            case null or YamlScalar { IsNull: true }:
                return [];
            case YamlList list:
                return [.. list.Items.Select(n => ReadOne(n, context)).OfType<Question>()];
            default:
                context.Add(BookMessages.WrongShape(node.Span, "`asks`", "a list", node.Described));
                return [];
        }
    }

    private static Question? ReadOne(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the question", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("question", "Which way is open?") & map.Required("answer", "In line with the pipe.");
        Question question = new(map.Text("question"), map.Text("answer"), node.Span);
        map.Finish();
        return whole ? question : null;
    }
}
