using System.Text;

namespace Sightglass.Drawing.Svg;

/// <summary>Writes SVG as text: elements open and close in order, text and attributes are escaped.</summary>
public sealed class SvgWriter
{
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = new();

    public SvgWriter Open(string element, params ReadOnlySpan<SvgAttribute> attributes)
    {
        Start(element, attributes);
        _text.Append('>');
        _open.Push(element);
        return this;
    }

    public SvgWriter Close()
    {
        _text.Append("</").Append(_open.Pop()).Append('>');
        return this;
    }

    /// <summary>An element without content.</summary>
    public SvgWriter Element(string element, params ReadOnlySpan<SvgAttribute> attributes)
    {
        Start(element, attributes);
        _text.Append("/>");
        return this;
    }

    /// <summary>A path of a class; nothing is written for an empty path.</summary>
    public SvgWriter Path(string style, SvgPath path, params ReadOnlySpan<SvgAttribute> attributes) =>
        path.IsEmpty ? this : Element("path", [("class", style), ("d", path.ToString()), .. attributes]);

    /// <summary>A line of text; y is its base line.</summary>
    public SvgWriter Text(string style, double x, double y, string text, params ReadOnlySpan<SvgAttribute> attributes)
    {
        Open("text", [("class", style), ("x", x), ("y", y), .. attributes]);
        Content(text);
        return Close();
    }

    /// <summary>What a pointer or a reader is told about the element that is open.</summary>
    public SvgWriter Title(string text)
    {
        Open("title");
        Content(text);
        return Close();
    }

    /// <summary>Text inside the element that is open.</summary>
    public SvgWriter Content(string text)
    {
        Escape(text, quotes: false);
        return this;
    }

    /// <summary>Well-formed SVG or CSS that this library made, as it is.</summary>
    internal SvgWriter Raw(string markup)
    {
        _text.Append(markup);
        return this;
    }

    public SvgWriter Break()
    {
        _text.Append('\n');
        return this;
    }

    /// <summary>The text so far.</summary>
    /// <exception cref="InvalidOperationException">An element is still open.</exception>
    public override string ToString() =>
        _open.Count == 0 ? _text.ToString() : throw new InvalidOperationException($"Element '{_open.Peek()}' is still open.");

    private void Start(string element, ReadOnlySpan<SvgAttribute> attributes)
    {
        _text.Append('<').Append(element);
        foreach (SvgAttribute attribute in attributes)
        {
            if (attribute.Value is null)
            {
                continue;
            }

            _text.Append(' ').Append(attribute.Name).Append("=\"");
            Escape(attribute.Value, quotes: true);
            _text.Append('"');
        }
    }

    private void Escape(string text, bool quotes)
    {
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => _text.Append("&amp;"),
                '<' => _text.Append("&lt;"),
                '>' => _text.Append("&gt;"),
                '"' when quotes => _text.Append("&quot;"),
                < ' ' and not '\t' and not '\n' => _text.Append(' '),
                '\uFFFE' or '\uFFFF' => _text.Append('?'),
                _ => _text.Append(c),
            };
        }
    }
}
