using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of an item: keys that all share, and for each kind its own by <c>if</c> and <c>then</c>.</summary>
internal sealed class ItemSchema(KindCatalog kinds, QuantityDefinitions quantities)
{
    private readonly ParameterSchema _parameters = new(quantities);

    public JsonObject Item()
    {
        JsonObject item = new()
        {
            ["type"] = new JsonArray("object", "null"),
            ["description"] = "A piece of equipment.",
            ["properties"] = Properties(Common()),
            ["allOf"] = new JsonArray([.. Sheets().Select(k => (JsonNode)IfKind(k))]),
            ["unevaluatedProperties"] = false,
        };
        return item;
    }

    /// <summary>
    /// What a modification changes of an item: any key of any kind, none needed; or the word <c>removed</c>. Any other name may be a parameter
    /// of a use: only with all files at hand can that be told.
    /// </summary>
    public JsonObject Change()
    {
        IEnumerable<string> keys = Common().Select(k => k.Key).Concat(Sheets().SelectMany(k => Own(k).Select(o => o.Key))).Distinct(StringComparer.Ordinal);
        JsonObject body = new() { ["type"] = "object", ["propertyNames"] = new JsonObject { ["anyOf"] = new JsonArray(Choice(keys.Order(StringComparer.Ordinal)), Ref("name")) } };
        return new()
        {
            ["description"] = "Keys given replace those of the class, others stay; `removed` takes the item away.",
            ["anyOf"] = new JsonArray(new JsonObject { ["const"] = "removed" }, body),
        };
    }

    /// <summary>The use of an assembly: its parameters, which only the assembly knows, stand beside these keys.</summary>
    public JsonObject Use() => new()
    {
        ["type"] = "object",
        ["description"] = "The parts of an assembly, once.",
        ["properties"] = Properties(
        [
            Key("assembly", Text("The assembly that is used here.")),
            Key("at", RefOrHole("point", "Where its positions are measured from; the class's own axes where absent.")),
            Key("changes", Named(Change(), "Parts, by their full names, with the keys that differ here; positions in the class's axes.")),
        ]),
        ["required"] = new JsonArray("assembly"),
    };

    /// <summary>An entry of <c>items</c>: the use of an assembly, or an item.</summary>
    public static JsonObject Entry() => new()
    {
        ["if"] = new JsonObject { ["type"] = "object", ["required"] = new JsonArray("assembly") },
        ["then"] = Ref("use"),
        ["else"] = Ref("item"),
    };

    private static JsonObject RefOrHole(string definition, string description) => OrHole(Ref(definition, description));

    private IEnumerable<KindSheet> Sheets() =>
        kinds.Find(KindSheet.Described.Name) is null ? kinds.Sheets.Append(KindSheet.Described) : kinds.Sheets;

    private IEnumerable<KeyValuePair<string, JsonObject>> Common() =>
    [
        Key("kind", Kinds()),
        Key("system", Text("Name of the system it belongs to.")),
        Key("position", RefOrHole("point", "Where it is, in metres of the class's axes; of a tank the middle of its floor.")),
        Key("places", Ref("names", "Places from which it can be seen and reached; the first is its own.")),
        Key("label", Text("Short words for drawings; its name where none are given.")),
        Key("for", Text("What it is for.")),
        Key("normal", Text("What normal looks like.")),
        Key("cautions", List(Ref("caution"), "Dangers, each with its signal word.")),
        Key("know", Text("What to know about it.")),
        Key("operate", Text("How to operate it.")),
        Key("repair", Text("How to repair it.")),
        Key("asks", List(Map(null, [Key("question", Text("What is asked in front of it.")), Key("answer", Text("What a good answer says."))], "question", "answer"), "Questions for a lesson.")),
        Key("photo", Text("A picture below the book's folder.")),
        Key("holds", Ref("names", "Items that it holds, as a panel its breakers: what happens if it fails is what happens if they do.")),
        Key("if it fails", Text("What happens if it fails, told where nothing of it is computed.")),
        Key("connects to", Ref("names", "Other items to look at.")),
        Key("who", Ref("names", "Roles that may operate it.")),
        Key("permission", new JsonObject { ["type"] = new JsonArray("string", "null"), ["description"] = "The role whose permission it needs." }),
        Key("told", Ref("names", "Roles that must be told.")),
        Key("takes", quantities.Value(Dimension.Second, "How long operating takes.", "2 s")),
        Key("hands", Ref("yes or no", "Whether everybody who is taught may try it in a lesson, and it can be put back there as it was; usual: no.")),
    ];

    private JsonObject Kinds() => new()
    {
        ["description"] = "What it is; absent for something that is only described.",
        ["anyOf"] = new JsonArray([.. Sheets().Select(k => (JsonNode)new JsonObject { ["const"] = k.Name, ["description"] = k.Purpose })]),
    };

    private JsonObject IfKind(KindSheet kind)
    {
        JsonObject named = new() { ["properties"] = new JsonObject { ["kind"] = new JsonObject { ["const"] = kind.Name } }, ["required"] = new JsonArray("kind") };
        JsonObject condition = kind.Name != KindSheet.Described.Name
            ? named
            : new() { ["anyOf"] = new JsonArray(named, new JsonObject { ["not"] = new JsonObject { ["required"] = new JsonArray("kind") } }) };
        JsonObject then = new() { ["properties"] = Properties(Own(kind)) };
        Require(then, [.. Needed(kind)]);
        return new() { ["if"] = condition, ["then"] = then };
    }

    private static IEnumerable<string> Needed(KindSheet kind)
    {
        IEnumerable<string> ends = new[] { "from", "to" }.Where(kind.NeedsEnd);
        IEnumerable<string> positions = kind is { Role: KindRole.Control, Positions.Length: 0 } ? ["positions"] : [];
        return ends.Concat(positions).Concat(kind.Parameters.Where(p => p.Required).Select(p => p.Name)).Distinct(StringComparer.Ordinal);
    }

    private Dictionary<string, JsonObject> Own(KindSheet kind)
    {
        Dictionary<string, JsonObject> keys = new(StringComparer.Ordinal);
        if (kind.Role == KindRole.Store)
        {
            keys["ports"] = RefOrHole("ports", "Where paths end: heights above its floor.");
        }

        foreach (string end in new[] { "from", "to" }.Where(kind.HasEnd))
        {
            keys[end] = Text(kind.Ports.FirstOrDefault(p => p.Name == end)?.Doc ?? (kind.Conducts ? "A wire, or `frame`." : "An item, `item, port`, or `outside`."));
        }

        if (kind.TakesPositions)
        {
            keys["positions"] = Ref("names", "Positions it can be put in, in order.");
            keys["usual"] = Text("The position it has when nothing else is said; the first where none is given.");
        }
        else if (kind.Positions.Length > 0)
        {
            keys["usual"] = OrHole(Choice(kind.Positions, "The position it has when nothing else is said.", kind.Positions[0]));
        }

        if (kind.Role == KindRole.Indication)
        {
            AddReading(keys);
        }

        foreach (KindParameter p in kind.Parameters)
        {
            keys[p.Name] = _parameters.Of(p);
        }

        return keys;
    }

    private static void AddReading(Dictionary<string, JsonObject> keys)
    {
        keys["shows"] = Text("A formula of the true state.");
        keys["scale"] = OrHole(Pattern(QuantityPatterns.AnyRange(), "From the lower to the upper end, such as `0 % .. 100 %`."));
        keys["resolution"] = Text("The least step it shows.");
        keys["normal range"] = Text("The stretch of the scale that is normal.");
        keys["words"] = Named(Text(), "Words for stretches of the scale: `low: 0 % .. 25 %`.");
    }
}
