using System.Net;
using System.Text;

namespace Sightglass.Web.Room.Trainee;

/// <summary>Small pieces of markup.</summary>
internal static class Html
{
    public static string Encode(string? text) => WebUtility.HtmlEncode(text) ?? "";

    /// <summary>A button that asks for something: <c>data-do</c> with what it is about.</summary>
    public static string Button(string id, string words, string does, (string Name, string Value)[]? with = null, string style = "btn", string attributes = "")
    {
        StringBuilder made = new();
        made.Append("<button type=\"button\" class=\"").Append(style).Append("\" id=\"").Append(Encode(id)).Append("\" data-do=\"").Append(does).Append('"');
        foreach ((string name, string value) in with ?? [])
        {
            made.Append(" data-").Append(name).Append("=\"").Append(Encode(value)).Append('"');
        }

        return made.Append(attributes.Length == 0 ? "" : " " + attributes).Append('>').Append(words).Append("</button>").ToString();
    }

    /// <summary>Words of a button, with what they are about for whoever does not see what they stand beside.</summary>
    public static string With(string words, string about) => $"{Encode(words)}<span class=\"vh\">: {Encode(about)}</span>";

    /// <summary>An empty place for a piece.</summary>
    public static string Slot(string id, string element = "div", string attributes = "") => $"<{element} id=\"{id}\"{(attributes.Length == 0 ? "" : " " + attributes)}></{element}>";
}
