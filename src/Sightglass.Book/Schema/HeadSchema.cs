using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Keys that stand once in a book.</summary>
internal sealed class HeadSchema(QuantityDefinitions quantities)
{
    public IEnumerable<KeyValuePair<string, JsonObject>> Keys() =>
    [
        Key("book", Text("The title.")),
        Key("edition", Text("The edition, a text.")),
        Key("notice", Text("Shown on every page and report.")),
        Key("railroad", Text("Whose machine it is.")),
        Key("length", quantities.Value(Dimension.Metre, "Over the coupler pulling faces.", "20 m")),
        Key("width", quantities.Value(Dimension.Metre, "Of the body.", "3.1 m")),
        Key("in service", Text("A situation in which the machine is in service and nothing is wrong: what happens when something fails is shown from it.")),
        Key("walk starts", Choice(["right", "left"], "Side on which the walk round starts.", "right")),
        Key("shown in", List(Text(), "Units in which values are shown, one for each sort of quantity.")),
        Key("hauling", new MakingUpSchema(quantities).Hauling()),
        Key("making up", new MakingUpSchema(quantities).MakingUp()),
    ];
}
