using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Classes of cars and the trains made of them.</summary>
internal sealed class TrainSchema(SectionSchema sections, QuantityDefinitions quantities)
{
    public JsonObject Cars()
    {
        IEnumerable<string> own = SectionList.Car("").Named;
        IEnumerable<KeyValuePair<string, JsonObject>> shared = sections.Keys().Where(k => own.Contains(k.Key) || k.Key == "legs");
        return Named(Map("A vehicle with places, items and ends of its own; roles, protections, systems and assemblies are the book's.",
        [
            Key("text", Text("What it is.")),
            Key("length", quantities.Value(Dimension.Metre, "Over the coupler pulling faces.", "25 m")),
            Key("width", quantities.Value(Dimension.Metre, "Of the body; the machine's where absent.")),
            Key("hauling", new MakingUpSchema(quantities).Hauling()),
            Key("items", Named(Ref("entry"), "Pieces of equipment by name.")),
            .. shared,
        ]), "Classes of cars that trains are made of.");
    }

    public static JsonObject Trains()
    {
        JsonObject vehicle = Map(null,
        [
            Key("vehicle", Text($"A car, `{TrainVehicle.ThisMachine}` or `{TrainVehicle.AnotherMachine}`.")),
            Key("count", new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["description"] = "How many of them follow each other." }),
            Key("turned", Ref("yes or no", "Whether its front faces the rear of the train.")),
        ], "vehicle");
        JsonObject any = new() { ["anyOf"] = new JsonArray(Text($"A car, `{TrainVehicle.ThisMachine}` or `{TrainVehicle.AnotherMachine}`."), vehicle) };
        return Named(Map("Vehicles coupled one behind the other, `this machine` once.",
        [
            Key("text", Text()),
            Key("vehicles", List(any, "From the head of the train.")),
            Key("measures", Named(Text("A formula of the train's names."), "What quantities of published rules are in this train.")),
        ], "vehicles"), "Trains by name.");
    }
}
