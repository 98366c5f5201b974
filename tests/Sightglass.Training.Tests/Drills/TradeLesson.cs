namespace Sightglass.Training.Tests.Drills;

/// <summary>A scenario of the trade, the drill of the demo that teaches it, and the wrong way that must not pass there.</summary>
/// <param name="Scenario">Its number: `Trade_11` in the names of the tests that compute it.</param>
/// <param name="Says">What it teaches.</param>
/// <param name="Drill">By name.</param>
/// <param name="Card">That solves the drill, and is spoiled.</param>
/// <param name="Spoilt">Steps that are left out (`5`), or in which one text stands for another (`2: half => full`).</param>
/// <param name="Fails">What is then written on the sheet as not met.</param>
public sealed record TradeLesson(int Scenario, string Says, string Drill, string Card, string[] Spoilt, string Fails)
{
    public override string ToString() => $"{Scenario}: {Drill}";
}
