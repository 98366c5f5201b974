using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Stable ids of the nodes of a network: their names as slugs, numbered where two would be the same.</summary>
internal sealed class DiagramIds
{
    private readonly Dictionary<string, string> _ids = new(StringComparer.Ordinal);

    public DiagramIds(DiagramInput input)
    {
        HashSet<string> taken = [];
        foreach (string name in input.Nodes.Select(n => n.Id).Order(StringComparer.Ordinal))
        {
            string slug = Slug.Of(name);
            string id = slug;
            for (int i = 2; !taken.Add(id); i++)
            {
                id = $"{slug}-{i}";
            }

            _ids[name] = id;
        }
    }

    public string this[string node] => _ids.TryGetValue(node, out string? id) ? id : Slug.Of(node);
}
