using Sightglass.Basics.Language;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>What a situation draws, as people read it. Ranges are kept by their English names, because counterexamples are told by them.</summary>
public static class RangeWords
{
    private static readonly KeptForms s_forms = new(
        ("road number", () => Say.It("road number")),
        ("row of {0}", () => Say.It("row of {0}")),
        ("place of {0}", () => Say.It("place of {0}")),
        ("{0}, chance", () => Say.It("{0}, chance")),
        ("{0}, on", () => Say.It("{0}, on")),
        ("{0}, after", () => Say.It("{0}, after")));

    /// <param name="name">Of a <see cref="DrawnRange"/>.</param>
    public static string Of(string name)
    {
        string said = s_forms.Find(name, Say.Word) ?? QuantityWords.Of(name);
        return said != name ? said : string.Join(", ", name.Split(", ").Select(Say.Word));
    }
}
