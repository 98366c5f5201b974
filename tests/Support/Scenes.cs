namespace Sightglass.Tests.Support;

/// <summary>A run of the demo of which everything is shown that holds of any run: one of its situations, and what is done in it.</summary>
/// <param name="Situation">Of the demo's book; it says in which train.</param>
/// <param name="Number">Of its case.</param>
/// <param name="Seconds">How long it goes on.</param>
/// <param name="Deeds">When (s), which control, to which position.</param>
internal sealed record Scene(string Situation, ulong Number, double Seconds, params (double At, string Item, string Position)[] Deeds)
{
    /// <summary>Of every system and of trains. A next system adds its rows here and is shown to be the same however it is run, by every test that takes them.</summary>
    public static IReadOnlyList<Scene> All { get; } =
    [
        new("leaking compartment", 5, 900, (100.25, "aft supply valve", "closed"), (300, "throttle", "notch 8"), (600.5, "emergency fuel cut-off, cab", "pushed")),
        new("air from nothing", 3, 300, (150.25, "automatic brake handle", "full service"), (200, "automatic brake handle", "release"), (230.5, "front truck cutout cock", "closed")),
        new("local train, charged", 0, 150, (10.25, "automatic brake handle", "full service"), (60, "automatic brake handle", "release"), (100.5, "brake pipe coupling between car 2 and car 3", "parted")),
        new("brake pipe of a train with a leak", 4, 200, (30.25, "automatic brake handle", "minimum"), (90, "B brake pipe angle cock of car 1", "closed")),
        new(
            "double-headed express, charged", // with wires to the second machine, power and doors of the cars, and a train that is parted
            0,
            60,
            [
                (2.25, "throttle", "notch 2"), (3, "sand switch", "on"), (4.5, "head-end power key", "on"), (6, "door key of car 2", "on"), (7.25, "right door switch of car 2", "open all"),
                (10.25, "quick release lever", "held"), (20, "automatic brake handle of unit 2", "emergency"), (30.5, "automatic brake handle", "emergency"),
                (35.25, "head-end right jumper between car 2 and car 3", "parted"), (45.5, "A end uncoupling lever of car 5", "lifted"),
            ]),
        new("under clear signals", 0, 60, (5.25, "code of the track", "code 120"), (8, "acknowledging pedal", "pressed"), (9, "acknowledging pedal", "up"), (20.5, "code of the track", "no code")),
        new("machine that loads", 0, 90, (2.25, "throttle", "idle"), (3, "reverser", "centred"), (4, "parking brake control", "set"), (6.25, "cab heater knob", "on"), (8, "machinery door, left", "open"), (9.5, "headlight breaker", "off"), (20, "self-load switch", "on"), (21.5, "throttle", "notch 3")),
    ];

    /// <summary>The scene of a situation, for tests that take its name.</summary>
    public static Scene Of(string situation) => All.Single(s => s.Situation == situation);
}
