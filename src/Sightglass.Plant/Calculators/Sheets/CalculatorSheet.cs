using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>
/// A calculation that a person does on paper: what it asks for, what it gives, the formula in the names of its values, where it comes from and what it leaves out. It is a thin face
/// on the same models that run the machine.
/// </summary>
public sealed record CalculatorSheet
{
    public required string Name { get; init; }

    /// <summary>What it answers.</summary>
    public required string Purpose { get; init; }

    public required ImmutableArray<CalculatorValue> Inputs { get; init; }

    public required ImmutableArray<CalculatorValue> Results { get; init; }

    /// <summary>In the names of its values.</summary>
    public required string Formula { get; init; }

    /// <summary>Where the formula comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What it leaves out, and who decides.</summary>
    public required string Caution { get; init; }

    /// <summary>How grave it is where work can hurt; a notice where it cannot.</summary>
    public SignalWord Signal { get; init; } = SignalWord.Notice;

    public required CalculatorPlot Plot { get; init; }

    /// <summary>What is said of some results.</summary>
    public ImmutableArray<CalculatorRemark> Remarks { get; init; } = [];

    /// <summary>SI values in the order of <see cref="Inputs"/> to SI results in the order of <see cref="Results"/>; no number or endless where there is no answer.</summary>
    public required Func<ImmutableArray<double>, ImmutableArray<double>> Work { get; init; }

    /// <summary>What there is no answer for, in plain words, when <see cref="Work"/> gives no number.</summary>
    public string NoAnswer { get; init; } = "there is no answer for these values";

    /// <summary>Every text of the sheet that a person reads.</summary>
    public IEnumerable<string> Texts =>
    [
        Name, Purpose, Formula, Source, Caution, NoAnswer, .. Remarks.Select(r => r.Text), .. Inputs.Concat(Results).SelectMany(v => v.Choices.Append(v.Name).Append(v.Text)),
    ];
}
