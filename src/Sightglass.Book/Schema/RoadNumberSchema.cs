using System.Text.Json.Nodes;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Road numbers with their modifications.</summary>
internal sealed class RoadNumberSchema(ItemSchema items)
{
    public JsonObject Section() => Named(Map(null, [Key("modifications", List(Modification()))]), "Vehicles of the class with what differs on them.");

    private JsonObject Modification() => Map("A dated change, applied over the class in the order of dates.",
    [
        Key("name", Text()),
        Key("since", Pattern(@"^\d{4}-\d{2}-\d{2}$", "Year-month-day.")),
        Key("text", Text()),
        Key("changes", Named(items.Change(), "Items with the keys that differ.")),
    ], "name");
}
