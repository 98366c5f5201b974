using Sightglass.Basics.Language;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Diagram;

/// <summary>The words beside a part: its name, what it feels without taking from it, and the controls that move it.</summary>
internal sealed class ThroughWords
{
    /// <summary>Half a control's mark.</summary>
    public const double Mark = 8;

    private ThroughWords(IReadOnlyList<string> name, IReadOnlyList<string> quiet, IReadOnlyList<DiagramNode> controls, double size)
    {
        (Name, Quiet, Controls) = (name, quiet, controls);
        Line = Math.Ceiling(size * 1.25);
        ControlLine = Math.Max(21, Line + 2);
        double Wide(string text) => TextMeasure.Width(text, TextFace.Sans500, size);
        Width = Name.Concat(Quiet).Select(Wide).Concat(controls.Select(c => Wide(c.Label) + (2 * Mark) + 6)).DefaultIfEmpty(0).Max();
        Height = ((Name.Count + Quiet.Count) * Line) + (controls.Count * ControlLine);
    }

    public IReadOnlyList<string> Name { get; }

    /// <summary>Lines in small ink.</summary>
    public IReadOnlyList<string> Quiet { get; }

    /// <summary>Those whose mark stands here; elsewhere they are only named.</summary>
    public IReadOnlyList<DiagramNode> Controls { get; }

    public double Line { get; }

    public double ControlLine { get; }

    public double Width { get; }

    public double Height { get; }

    /// <param name="node">The part.</param>
    /// <param name="input">What it belongs to.</param>
    /// <param name="marked">Controls whose mark stands somewhere already; those that get theirs here are added.</param>
    /// <param name="size">Of labels, pixels.</param>
    public static ThroughWords Of(DiagramNode node, DiagramInput input, HashSet<string> marked, double size)
    {
        List<DiagramNode> controls = [.. input.Nodes.Where(n => n.Role == DiagramRole.Control && n.Of.Contains(node.Id)).OrderBy(n => n.Id, StringComparer.Ordinal)];
        List<DiagramNode> here = [.. controls.Where(c => marked.Add(c.Id))];
        IEnumerable<string> quiet = node.Feels.Select(f => $"{Say.Word(f.Word)} {NameOf(f.Node, input)}").Concat(controls.Except(here).Select(c => Say.With($"by {Lower(c.Label)}")));
        double width = size * 6.8;
        return new(
            TextMeasure.Wrap(node.Label, TextFace.Sans500, size, width), [.. quiet.SelectMany(q => TextMeasure.Wrap(q, TextFace.Sans500, size, width * 1.15))], here, size);
    }

    private static string NameOf(string id, DiagramInput input) => Lower(input.Nodes.FirstOrDefault(n => n.Id == id)?.Label is { Length: > 0 } label ? label : Say.Book(id));

    private static string Lower(string label) => label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
