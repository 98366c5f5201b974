using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Cli.Output;
using Sightglass.Drawing.Svg;
using Sightglass.Paper.Papers;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Verbs;

/// <summary><c>calc</c>: a calculation as it is done on paper, with its formula, source and caution.</summary>
internal sealed class CalcVerb : Verb
{
    private readonly Argument<string?> _name = new("NAME") { Description = "Which calculation. Default: list them.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Argument<string[]> _values = new("VALUE") { Description = "What is put in, each as `NAME = VALUE UNIT`. Without any it says what is asked for.", Arity = ArgumentArity.ZeroOrMore };

    private readonly Option<UnitSystem?> _units = new("--units") { Description = "Units of what comes out and of the plot: `us` or `si`. Default: as the calculation is usually told, with the other beside it." };
    private readonly Option<string?> _plot = OutputFile.Option("--plot", "Draw how the result follows one of the values into this SVG file.");
    private readonly Option<Theme> _theme = new("--theme") { Description = "Light in which the plot is shown.", DefaultValueFactory = _ => Theme.Reader };

    public CalcVerb()
        : base("calc", "Work out a number as it is done on paper: the formula with the values put in, the result, where it comes from and what it leaves out. Values in any unit.")
    {
        Add(_name);
        Add(_values);
        Add(_units);
        Add(_plot);
        Add(_theme);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("calc", "what can be worked out"),
        ("calc stopping", "what it asks for"),
        ("calc stopping \"speed = 79 mph\" \"deceleration = 0.9 m/s^2\" \"dead = 1 s\" \"build-up = 4 s\"", "a stop"),
        ("calc \"tractive effort\" \"power = 2600 kW\" \"mass = 120 t\" \"adhesion = 0.25\" \"speed = 30 mph\" --units us --plot effort.svg", "in US units, with its plot"),
        ("calc \"fill time\" \"wanted = 9000 L\" \"there = 3000 L\" \"flow = 300 US gal/min\" --json", "for a script"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        string? name = line.GetValue(_name);
        if (name is null)
        {
            Write(line, () => Answer.Write(output, CalcListAnswer.Of(CalculatorLibrary.All)), () => CalcText.List(output));
            return Task.FromResult(ExitCode.Good);
        }

        if (CalculatorLibrary.Find(name) is not { } sheet)
        {
            string[] names = [.. CalculatorLibrary.All.Select(c => c.Name)];
            return WrongUse(line, $"There is no calculation `{name}`; {Nearest.DidYouMean(name, names) ?? $"there are {string.Join(", ", names)}"}");
        }

        string[] given = line.GetValue(_values) ?? [];
        if (given.Length == 0)
        {
            if (line.GetValue(_plot) is not null)
            {
                return WrongUse(line, "There is nothing to plot before values are put in; write each as `NAME = VALUE UNIT`, in quotes");
            }

            Write(line, () => Answer.Write(output, CalcListAnswer.Of([sheet])), () => CalcText.Asks(output, sheet));
            return Task.FromResult(ExitCode.Good);
        }

        return Task.FromResult(Worked(line, sheet, given));
    }

    private int Worked(ParseResult line, CalculatorSheet sheet, string[] given)
    {
        TextWriter output = line.InvocationConfiguration.Output, error = line.InvocationConfiguration.Error;
        Dictionary<string, string> values = new(StringComparer.Ordinal);
        foreach (string pair in given)
        {
            string[] sides = pair.Split('=', 2, StringSplitOptions.TrimEntries);
            if (sides.Length != 2 || sides[0].Length == 0 || !values.TryAdd(sides[0], sides[1]))
            {
                error.WriteLine(sides.Length != 2 || sides[0].Length == 0 ? $"`{pair}` says no value; write it as `NAME = VALUE UNIT`, in quotes" : $"`{sides[0]}` is given twice");
                return ExitCode.WrongUse;
            }
        }

        List<CalculatorRefusal> refused = [];
        if (Calculation.Of(sheet, values, refused) is not { } calculation)
        {
            foreach (CalculatorRefusal r in refused)
            {
                error.WriteLine(r.Sentence);
            }

            return refused.All(r => r.Input is null) ? ExitCode.No : ExitCode.WrongUse;
        }

        UnitSystem? units = line.GetValue(_units);
        if (line.GetValue(_plot) is { } plot)
        {
            OutputFile.Write(plot, CalculatorPicture.Of(calculation, units, SvgOptions.Alone with { Theme = line.GetValue(_theme) }));
        }

        Write(line, () => Answer.Write(output, CalcAnswer.Of(calculation, units)), () => CalcText.Print(output, calculation, units));
        return ExitCode.Good;
    }

    private void Write(ParseResult line, Action json, Action text)
    {
        if (!line.GetValue(Json))
        {
            text();
            return;
        }

        // Keys and names of an answer in JSON are the same in every language.
        using (Tongue.English.Speak())
        {
            json();
        }
    }
}
