using System.Text;
using System.Text.Json;

namespace Sightglass.Book.Language;

/// <summary>Writes texts as a file of a language that waits for its translations.</summary>
public static class WordsList
{
    private static readonly JsonSerializerOptions s_plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>YAML: each text with an empty translation, which is refused until it is filled in.</summary>
    public static string Of(IEnumerable<ReadText> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        StringBuilder list = new("texts:\n");
        BookTextSort? sort = null;
        foreach (ReadText text in texts.OrderBy(t => t.Sort).ThenBy(t => t.Span))
        {
            if (sort != text.Sort)
            {
                sort = text.Sort;
                list.Append($"  # {Title(text.Sort)}\n");
            }

            list.Append($"  - text: {Quoted(text.Text)}\n    says: \"\"\n");
        }

        return list.ToString();
    }

    /// <summary>A string of JSON is a quoted value of YAML.</summary>
    private static string Quoted(string text) => JsonSerializer.Serialize(text, s_plain);

    private static string Title(BookTextSort sort) => sort switch
    {
        BookTextSort.Name => "Names: cards say them. Each must differ from the others of its sort.",
        BookTextSort.Word => "Positions and words of a scale.",
        _ => "Texts.",
    };
}
