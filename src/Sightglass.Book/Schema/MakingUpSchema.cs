using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of what a train needs to be made up and checked.</summary>
internal sealed class MakingUpSchema(QuantityDefinitions quantities)
{
    public JsonObject Hauling() => Map("What it weighs, resists and pulls.",
    [
        Key("mass", quantities.Value(Dimension.Kilogram, "In running order; a machine whose axles stand on scales is weighed.")),
        Key("axles", Count("Of the vehicle; 4 where absent.")),
        Key("driven axles", Count("Those that pull.")),
        Key("front", quantities.Value(Dimension.Area, "Seen from ahead.", "11 m^2")),
        Key("resistance", Choice(["passenger", "locomotive", "freight", "modified"], "The form of train resistance.", "passenger")),
        Key("power", quantities.Value(Dimension.Power, "Of the engine, for traction and for the train together.")),
        Key("efficiency", quantities.Value(Dimension.One, "From there to the rail.", "85 %")),
        Key("hand brake", quantities.Value(Dimension.Force, "With which its hand or parking brake holds it, at the rail.")),
    ]);

    public JsonObject MakingUp() => Map("How a train is made up.",
    [
        Key("text", Text()),
        Key("lines", Named(Map(null,
        [
            Key("goes to", Choice(["all", "machines"], "Every vehicle that has it, or from machine to machine.", "all")),
            Key("needed", Ref("yes or no", "Whether a train must not leave while a vehicle is not reached by it.")),
            Key("lost", Text("What a vehicle lacks that it does not reach.")),
        ]), "Lines that ends join, in the order in which they are coupled.")),
        Key("lead", Settings("How the leading machine is set up.")),
        Key("trail", Settings("How a machine is set up that another one leads.")),
        Key("dead", Settings("How a machine is set up that is hauled dead.")),
        Key("brakes", Map("What sets the brakes of the train in full.", [Key("set", Text("A control of the machine.")), Key("to", Position()), Key("within", quantities.Value(Dimension.Second, "Until they are set.", "40 s"))], "set", "to")),
        Key("commands", new JsonObject
        {
            ["type"] = new JsonArray("object", "null"),
            ["description"] = "What the leading cab commands in every unit.",
            ["additionalProperties"] = Map(null,
            [
                Key("set", Text("A control of the machine.")),
                Key("to", Position()),
                Key("answers", Text("A fact of the machine that comes true in a unit that answers.")),
                Key("turned", Text("The same for a unit that faces the other way.")),
                Key("pulls", Ref("yes or no", "Whether a unit that does not answer it does not pull.")),
            ], "set", "to", "answers"),
        }),
    ]);

    public static JsonObject Settings(string says) => new() { ["type"] = new JsonArray("object", "null"), ["description"] = says, ["additionalProperties"] = Position() };

    private static JsonObject Position() => new() { ["type"] = new JsonArray("string", "number", "boolean"), ["description"] = "One of its positions." };

    private static JsonObject Count(string says) => new() { ["type"] = "integer", ["minimum"] = 1, ["description"] = says };
}
