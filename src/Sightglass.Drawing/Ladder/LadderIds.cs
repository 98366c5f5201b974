using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Ladder;

/// <summary>Stable ids of parts: their names as slugs, numbered where two would be the same.</summary>
internal sealed class LadderIds
{
    private readonly Dictionary<string, string> _ids = new(StringComparer.Ordinal);

    public LadderIds(LadderInput input)
    {
        HashSet<string> taken = [];
        foreach (string name in input.Parts.Select(p => p.Id).Order(StringComparer.Ordinal))
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

    public string this[string part] => _ids[part];
}
