using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Output;

/// <summary>What <c>calc NAME … --json</c> answers.</summary>
/// <param name="Given">As it was written, with what was taken where nothing was.</param>
/// <param name="Worked">The formula with the values put in.</param>
internal sealed record CalcAnswer(string Calculation, IReadOnlyList<CalcAnswer.Value> Given, string Formula, string Worked, IReadOnlyList<CalcAnswer.Value> Results, string Source, string Caution)
{
    public static CalcAnswer Of(Calculation c) => new(
        c.Sheet.Name,
        [.. c.Sheet.Inputs.Select((v, i) => new Value(v.Name, c.Given[i], c.Values[i]))],
        c.Sheet.Formula,
        c.Worked(),
        [.. c.Sheet.Results.Select((v, i) => new Value(v.Name, c.Shown(i), c.Results[i]))],
        c.Sheet.Source,
        c.Sheet.Caution);

    /// <param name="Si">In units of the SI.</param>
    internal sealed record Value(string Name, string Shown, double Si);
}
