using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cli.Output;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Verbs;

/// <summary><c>calc</c>: a calculation as it is done on paper, with its formula, source and caution.</summary>
internal sealed class CalcVerb : Verb
{
    private readonly Argument<string?> _name = new("NAME") { Description = "Which calculation. Default: list them.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Argument<string[]> _values = new("VALUE") { Description = "What is put in, each as `NAME = VALUE UNIT`. Without any it says what is asked for.", Arity = ArgumentArity.ZeroOrMore };

    public CalcVerb()
        : base("calc", "Work out a number as it is done on paper: the formula with the values put in, the result, where it comes from and what it leaves out. Values in any unit.")
    {
        Add(_name);
        Add(_values);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("calc", "what can be worked out"),
        ("calc stopping", "what it asks for"),
        ("calc stopping \"speed = 79 mph\" \"deceleration = 0.9 m/s^2\" \"dead = 1 s\" \"build-up = 4 s\"", "a stop"),
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

        DiagnosticList found = [];
        if (Calculation.Of(sheet, values, found) is not { } calculation)
        {
            foreach (Diagnostic d in found)
            {
                error.WriteLine(d.Fix is null ? d.Message : $"{d.Message}; {d.Fix}");
            }

            return found.Any(d => d.Code == Calculation.NoAnswer) ? ExitCode.No : ExitCode.WrongUse;
        }

        Write(line, () => Answer.Write(output, CalcAnswer.Of(calculation)), () => CalcText.Print(output, calculation));
        return ExitCode.Good;
    }

    private void Write(ParseResult line, Action json, Action text) => (line.GetValue(Json) ? json : text)();
}
