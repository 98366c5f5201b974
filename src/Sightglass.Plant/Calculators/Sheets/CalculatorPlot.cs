namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>The small plot of a calculator: one result over one input, all else as it is given.</summary>
/// <param name="Along">Name of the input.</param>
/// <param name="From">Where it begins, with its unit; further out where the value given lies outside.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Of">Name of the result.</param>
public sealed record CalculatorPlot(string Along, string From, string To, string Of);
