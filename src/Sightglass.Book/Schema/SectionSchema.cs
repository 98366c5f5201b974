using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Sections beside items, road numbers and situations.</summary>
internal sealed class SectionSchema(QuantityDefinitions quantities)
{
    public IEnumerable<KeyValuePair<string, JsonObject>> Keys() =>
    [
        Key("places", Named(Place(), "Places by name.")),
        Key("legs", List(Leg(), "Ways that the outline does not give.")),
        Key("roles", Named(Role(), "Roles that people have.")),
        Key("systems", Named(System(), "Running systems.")),
        Key("facts", Named(Fact(), "Named truths.")),
        Key("signs", Named(Sign(), "What can be seen, heard, smelled or felt.")),
        Key("hazards", Named(Hazard(), "Dangers of places and items.")),
        Key("protections", Named(Protection(), "Protections by name.")),
        Key("measures", Named(Text("A formula of the book's names; `PARAMETER of ITEM` is what the book gives for an item."), "What quantities of published rules are on this machine.")),
        Key("walks", Walks()),
        Key("drills", Named(new DrillSchema(quantities).Drill(), "Situations for a person to work in, and what is asked of them.")),
        Key("bets", Named(new BetSchema(quantities).Bet(), "Questions about what will happen, to bet on before it is run.")),
        Key("searches", Searches()),
        Key("routes", new RouteSchema(quantities).Routes()),
        Key("habits", Habits()),
        Key("pictures", Pictures()),
        Key("ends", Ends()),
        Key("silhouettes", Silhouettes()),
    ];

    private JsonObject Place() => Map(
        "Somewhere a person can stand; z 0 is on the ground.",
        [.. new CommonDefinitions(quantities).Axes(), Key("text", Text()), Key("room", new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["description"] = "How many people find room there." })],
        "x",
        "y");

    private static JsonObject Walks() => Named(
        Map("What is to be shown, and within which bounds; the shortest way is found from it.",
        [
            Key("text", Text()),
            Key("from", Text("A place; where the walk round the machine begins where absent.")),
            Key("to", Text("A place; any last stop where absent.")),
            Key("systems", Ref("names", "All items of these systems are shown.")),
            Key("items", Ref("names", "Items that are shown.")),
            Key("cards", Ref("names", "All that these cards name is shown.")),
            Key("in order", Ref("names", "Items that are shown one after the other.")),
            Key("closed", Ref("names", "Places at which nobody of the group may be.")),
            Key("kit", Ref("names", "What to bring.")),
            Key("role", Text("Whose places the group keeps to.")),
        ]),
        "Walks for a purpose.");

    private JsonObject Searches() => Named(
        Map("What keeps the fact from coming to hold is worked out by putting everything wrong that bears on it.",
        [
            Key("text", Text()),
            Key("wanted", Text("The fact that does not come to hold.")),
            Key("situation", Text("Where it comes to hold while nothing is wrong.")),
            Key("within", quantities.Value(Dimension.Second, "How long that takes.", "1 min")),
        ], "wanted", "situation"),
        "What does not come about, and is looked into.");

    private static JsonObject Habits() => Named(
        Map("What the hand did there, and what that does here.",
        [
            Key("text", Text("Which older machines.")),
            Key("lines", List(Map(null, [Key("item", Text("An item of this book.")), Key("was", Text("What it was there.")), Key("here", Text("What it is here.")), Key("hurts", Text("What the old habit does here."))], "item", "was", "here"))),
        ], "lines"),
        "What people bring with them from older machines that no book describes.");

    private JsonObject Pictures()
    {
        JsonObject Part(string says) => quantities.Value(Dimension.One, says);
        return Named(
            Map("A photograph or a rendered picture.",
            [
                Key("file", Text("Below the book's folder: .jpg, .png, .webp or .svg.")),
                Key("shows", Text("What there is to see, for those who cannot see it.")),
                Key("place", Text("From where it is seen.")),
                Key("road number", Ref("names", "The machines that look like this; all where absent.")),
                Key("marks", List(Map("Where an item is in it, from the upper left corner.", [Key("item", Text("An item.")), Key("x", Part("Its left edge, of the width.")), Key("y", Part("Its upper edge, of the height.")), Key("width", Part("Of the width.")), Key("height", Part("Of the height."))], "item", "x", "y", "width", "height"))),
            ], "file", "shows"),
            "Pictures of the machine.");
    }

    private JsonObject Ends() => Named(
        Map("What can be coupled there.",
        [
            Key("faces", Choice(["front", "rear"])),
            Key("items", Ref("names")),
            Key("joins", Named(Text("An item, such as a hose."), "Lines that go on into the next vehicle: the same line of both is joined.")),
            Key("mistaken", Named(Ref("names"), "Lines whose hose can be joined to that of another by mistake, with these.")),
            Key("gangway", Map("How people go through this end: joined to that of the vehicle coupled there, where it has one.",
            [
                Key("from", Text("A place within the vehicle.")),
                Key("takes", quantities.Value(Dimension.Second, "From there to the end at an ordinary pace.")),
                Key("through", Ref("names", "Items that one goes by, such as the end's door.")),
            ], "from", "takes")),
        ], "faces"),
        "Ends of the vehicle.");

    private JsonObject Leg() => Map("A way between two places.",
    [
        Key("from", Text("A place.")),
        Key("to", Text("A place.")),
        Key("takes", quantities.Value(Dimension.Second, "At an ordinary pace.")),
        Key("by", Text("Steps, door, ladder.")),
        Key("through", Ref("names", "Items that one goes by, such as steps and a door: while one of them cannot be used, nobody gets through.")),
    ], "from", "to", "takes");

    private JsonObject Role() => Map(null,
    [
        Key("walks", quantities.Value(Dimension.Speed, "At an ordinary pace.", "1.3 m/s")),
        Key("reacts in", quantities.Value(Dimension.Second, "From seeing to beginning to act.", "2 s")),
        Key("text", Text()),
        Key("goes to", Ref("names", "Places; all where absent, none where empty.")),
    ]);

    private static JsonObject System() => Map(null,
    [
        Key("medium", Choice(["fuel", "main", "brake", "power", "control", "water"], "How it is drawn.", "fuel")),
        Key("alive", Ref("yes or no", "Whether it runs or is only described.")),
        Key("text", Text()),
    ]);

    public static JsonObject Fact() => Map("A truth that nobody on the ground can read.", [Key("is", Text("A condition.")), Key("text", Text())], "is");

    public static JsonObject Sign() => Map("The name is the sentence that cards say.",
    [
        Key("sense", Choice(["seen", "heard", "smelled", "felt"], null, "seen")),
        Key("when", Text("A condition.")),
        Key("from", Ref("names", "Places.")),
    ], "when", "from");

    private static JsonObject Protection()
    {
        (string Key, JsonObject Value)[] ways =
        [
            ("asked of", Text("The role that grants it; whoever asked gives it back.")),
            ("set at", Ref("names", "Places where it is set; it holds once it stands at each of them. The group that set it removes it.")),
            ("locks", Ref("names", "Items that are locked and tagged; it protects the one who locked each of them.")),
            ("chocks", Ref("names", "Items one of which is chocked. The group that set the chock removes it.")),
        ];
        JsonObject protection = Map("What makes it safe to be in a dangerous place: asked for, or set in one of three ways.", [.. ways.Select(w => Key(w.Key, w.Value)), Key("needs", Ref("names", "Items without which nobody can set it, such as the box of the chocks.")), Key("text", Text())]);
        protection["oneOf"] = new JsonArray([.. ways.Select(w => new JsonObject { ["required"] = new JsonArray(w.Key) })]);
        return protection;
    }

    public JsonObject Hazard()
    {
        JsonObject hazard = Map("Needs places or items, and one signal word.",
        [
            Key("places", Ref("names", "Places.")),
            Key("items", Ref("names", "Items.")),
            Key("when", Text("The condition under which it bites; always where absent.")),
            Key("bites", Choice(["being there", "touching", "coupling"], "Whether being at its places injures, or only touching its items, or only coupling and parting what joins them to another vehicle.", "being there")),
            Key("protection", new JsonObject { ["type"] = new JsonArray("string", "null"), ["description"] = "The protection it needs." }),
            .. CommonDefinitions.SignalWords(),
        ]);
        hazard["type"] = "object";
        hazard["oneOf"] = CommonDefinitions.OneSignalWord();
        return hazard;
    }

    private static JsonObject Silhouettes()
    {
        JsonObject shape = Map(null,
        [
            Key("style", Choice(["outline", "part", "detail", "tint", "glass", "solid", "lettering"], null, "outline")),
            Key("path", Text("Path data in metres: M L H V C S Q T A Z; the second coordinate is z above rail.")),
            Key("text", Text("For lettering.")),
        ], "path");
        return Map("Outlines of the sides.", new[] { "right", "rear", "left", "front" }.Select(s => Key(s, List(shape.DeepClone().AsObject()))));
    }
}
