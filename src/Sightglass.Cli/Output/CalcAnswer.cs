using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Output;

/// <summary>What <c>calc NAME … --json</c> answers.</summary>
/// <param name="Given">As it was written, with what was taken where nothing was.</param>
/// <param name="Worked">The formula with the values put in.</param>
/// <param name="Remarks">What is to be known of these results.</param>
internal sealed record CalcAnswer(
    string Calculation, IReadOnlyList<CalcAnswer.Value> Given, string Formula, string Worked, IReadOnlyList<CalcAnswer.Value> Results, IReadOnlyList<string> Remarks, string Source, string Caution)
{
    public static CalcAnswer Of(Calculation c, UnitSystem? units) => new(
        c.Sheet.Name,
        [.. c.Sheet.Inputs.Select((v, i) => new Value(v.Name, c.Given[i].Text, c.Given[i].Value.Si))],
        c.Sheet.Formula,
        string.Join("; ", c.Worked().Select(l => string.Concat(l.Select(p => p.Text)))),
        [.. c.Sheet.Results.Select((v, i) => new Value(v.Name, CalcText.Plain(c.Shown(i, units)), c.Results[i]))],
        [.. c.Remarks],
        c.Sheet.Source,
        c.Sheet.Caution);

    /// <param name="Si">In units of the SI.</param>
    internal sealed record Value(string Name, string Shown, double Si);
}
