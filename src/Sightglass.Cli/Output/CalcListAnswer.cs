using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Output;

/// <summary>What <c>calc --json</c> answers where nothing is put in.</summary>
internal sealed record CalcListAnswer(IReadOnlyList<CalcListAnswer.Row> Calculations)
{
    public static CalcListAnswer Of(IEnumerable<CalculatorSheet> sheets) => new([.. sheets.Select(s => new Row(s.Name, s.Purpose, [.. s.Inputs.Select(Asked)], [.. s.Results.Select(Asked)], s.Formula, s.Source, s.Caution))]);

    private static Value Asked(CalculatorValue v) => new(v.Name, v.Text, v.Example, v.Usual, v.Choices.IsEmpty ? null : v.Choices);

    internal sealed record Row(string Name, string Purpose, IReadOnlyList<Value> Inputs, IReadOnlyList<Value> Results, string Formula, string Source, string Caution);

    /// <param name="Example">Of a result the unit in which it is shown.</param>
    /// <param name="Usual">What it is where nothing is given; null where it must be.</param>
    /// <param name="Choices">The words of which one is given instead of a number; null for a number.</param>
    internal sealed record Value(string Name, string Text, string Example, string? Usual, IReadOnlyList<string>? Choices);
}
