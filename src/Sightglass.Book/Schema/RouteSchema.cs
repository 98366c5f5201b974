using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Routes, and how vehicles run over them.</summary>
internal sealed class RouteSchema(QuantityDefinitions quantities)
{
    public JsonObject Routes()
    {
        JsonObject stretch = Map("From where the one before it ends, the first from the start of the route.",
        [
            Key("to", quantities.Value(Dimension.Metre, "Milepost at which it ends.")),
            Key("grade", quantities.Value(Dimension.One, "Rise over run, above 0 uphill.", "0 %")),
            Key("curve", quantities.Value(Dimension.One, "Degrees by 100 ft of arc.", "0 deg")),
            Key("radius", quantities.Value(Dimension.Metre, "Of the curve, in place of `curve`.")),
            Key("limit", quantities.Value(Dimension.Speed, "Greatest speed that is allowed.")),
            Key("holds", quantities.Value(Dimension.One, "Share of the rail's adhesion that it has.", "100 %")),
        ], "to", "limit");
        JsonObject place = Map("Where the head of the train stands.", [Key("at", quantities.Value(Dimension.Metre, "Milepost.")), Key("stops", quantities.Value(Dimension.Second, "How long a train stands there; it goes by where absent."))], "at");
        JsonObject rail = Map("Share of a weight that it holds.", [Key("adhesion", quantities.Value(Dimension.One, "Without sand.")), Key("sanded", quantities.Value(Dimension.One, "With sand; as without where absent."))], "adhesion");
        return Named(Map("As its track chart has it.",
        [
            Key("text", Text()),
            Key("from", quantities.Value(Dimension.Metre, "Milepost of the start.", "0 mi")),
            Key("stretches", List(stretch, "One after the other.")),
            Key("places", Named(place, "By their names.")),
            Key("rail", Named(rail, "How the rail may be, the usual one first; dry where absent.")),
        ], "stretches"), "Lines that trains run over.");
    }

    public JsonObject Running()
    {
        JsonObject own = Map("Pounds for each short ton.", new[] { "constant", "per axle", "per speed", "per area" }.Select(k => Key(k, quantities.Value(Dimension.One))), "constant", "per axle", "per speed", "per area");
        JsonObject handles = Named(Text("The position."), "Controls with their positions.");
        JsonObject Handles() => handles.DeepClone().AsObject();
        return Map("What it weighs, resists, pulls and holds.",
        [
            Key("mass", quantities.Value(Dimension.Kilogram, "Ready to run, without what is in its fuel tanks.")),
            Key("axles", Count("How many.")),
            Key("resistance", new JsonObject { ["description"] = "A form of the trade, or its four numbers.", ["anyOf"] = new JsonArray(Choice(RunningResistance.Forms), own) }),
            Key("front", quantities.Value(Dimension.Area, "Of its front; not with `modified`.")),
            Key("pulls", Map("Of a machine that pulls.",
            [
                Key("engine", Text("The item that burns the fuel.")),
                Key("handle", Text("The control whose positions are its notches.")),
                Key("most", quantities.Value(Dimension.Force, "What the motors give at the start.")),
                Key("driven axles", Count("All of them where absent.")),
                Key("power", Named(quantities.Value(Dimension.Power), "At the rail, by position of the handle.")),
                Key("head-end costs", quantities.Value(Dimension.One, "Of each watt for the cars, what is lost at the rail.", "0 %")),
            ], "engine", "handle", "most", "power")),
            Key("hand brake", quantities.Value(Dimension.Force, "With which its hand or parking brake holds it, at the rail.")),
            Key("dynamic brake", List(Map(null, [Key("speed", quantities.Value(Dimension.Speed)), Key("force", quantities.Value(Dimension.Force))], "speed", "force"), "Force at the rail by speed; told beside the run, never counted for stopping.")),
            Key("brakes", Map("How its air brakes are handled.",
            [
                Key("let go", Handles()),
                Key("service", Handles()),
                Key("emergency", Handles()),
                Key("planned", quantities.Value(Dimension.One, "Share of full service by which ordinary stops are planned.", "60 %")),
            ], "let go", "service", "emergency")),
        ], "mass", "axles", "resistance");
    }

    private static JsonObject Count(string says) => new() { ["type"] = "integer", ["minimum"] = 1, ["description"] = says };
}
