using System.Collections.Immutable;
using System.Globalization;

namespace Sightglass.Cards.Programs;

/// <summary>A program as plain lines, one an operation, for people who look inside and for comparing programs.</summary>
public static class ProgramListing
{
    public static string Of(CardProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        string bindings = string.Join(", ", program.Bindings.Select(b => $"{b.Variable} = {b.Word}"));
        return string.Join(Environment.NewLine, Lines(program, said: true).Select(l => l.Line).Prepend($"{program.Title} ({bindings})").Append(""));
    }

    /// <summary>What a program does, step by step, without the words that it says and the titles of cards: the same in every language.</summary>
    public static ImmutableArray<(int Step, string Line)> Doings(CardProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        return [.. Lines(program, said: false)];
    }

    private static IEnumerable<(int Step, string Line)> Lines(CardProgram program, bool said)
    {
        yield return (0, $"for {string.Join(", ", program.For.Select(r => r.Name))}; told {string.Join(", ", program.Told.Select(r => r.Name))}");
        yield return (0, $"use when {(program.UseWhen is null ? "always" : Words(program.UseWhen))}");
        yield return (0, $"must never {string.Join("; ", program.MustNever.Select(f => f.Name))}");
        yield return (0, Number($"done when {(program.DoneWhen is null ? "always" : Words(program.DoneWhen))} for {program.StaysSoSeconds} s"));
        for (int i = 0; i < program.Ops.Length; i++)
        {
            yield return (program.Ops[i].PrintedStep, Number($"{i}: [{Number(program.Ops[i])}] {Words(program.Ops[i], program, said)}"));
        }
    }

    private static string Number(CardOp op) => op.Called is { } called ? Number($"{op.Step}>{called.Step}") : Number($"{op.Step}");

    private static string Words(CardOp op, CardProgram program, bool said)
    {
        string who = op.Person is null ? "" : op.Person.Name + ": ";
        return who + op switch
        {
            CardOp.Go go => $"go {go.Place.Name}",
            CardOp.Set set => $"set {set.Item} = {set.Position}",
            CardOp.Hold hold => Number($"hold {hold.Item} = {hold.Position} for {hold.Seconds} s") + (hold.Until is null ? "" : $" until {Words(hold.Until)} else {hold.Else}"),
            CardOp.Check check => $"check {Words(check.Condition)} else {check.Else}",
            CardOp.Look look => $"look {look.Sign.Name}{(look.Place is null ? "" : $" at {look.Place.Name}")} else {look.Else}",
            CardOp.Read read => $"read {read.Item} -> {program.Names[read.Name].Name}",
            CardOp.WaitFor wait => Number($"wait {wait.Seconds} s"),
            CardOp.WaitUntil wait => $"wait until {Words(wait.Condition)} " + Number($"at most {wait.AtMostSeconds} s else {wait.Else}"),
            CardOp.Tell tell => $"tell {string.Join(", ", tell.Roles.Select(r => r.Name))}: {Words(tell.Text, said)}",
            CardOp.Ask ask => $"ask {ask.Role.Name} for {ask.Protection?.Name ?? "permission: " + ask.Control} " + Number($"at most {ask.AtMostSeconds} s else {ask.Else}"),
            CardOp.Request request => $"ask {request.Role.Name} to set {request.What.Item} = {request.What.Position} " + Number($"at most {request.AtMostSeconds} s else {request.Else}"),
            CardOp.GiveBack back => $"give back {back.Protection.Name}",
            CardOp.Protect { Protection.Sort: Book.Model.ProtectionSort.Locks, Sets: true } locked => $"lock and tag {locked.Item}",
            CardOp.Protect protect => $"{(protect.Sets ? "set" : "remove")} {protect.Protection.Name} at {protect.Place?.Name ?? protect.Item!.ToString()}",
            CardOp.Together together => $"together {string.Join(", ", together.Branches)} then {together.Next}",
            CardOp.Join => "join",
            CardOp.Call call => said ? $"do card {call.Title}" + (call.Binding is { } bound ? $" ({bound.Variable} = {bound.Word})" : "") : "do card",
            CardOp.Jump jump => $"jump {jump.Target}",
            CardOp.If branch => $"if {Words(branch.Condition)} else {branch.Else}",
            CardOp.Repeat repeat => $"repeat until {Words(repeat.Until)} " + Number($"at most {repeat.Times} times every {repeat.EverySeconds} s back {repeat.Back} counter {repeat.Counter} else {repeat.Else}"),
            CardOp.Stop stop => $"stop: {Words(stop.Text, said)}",
            _ => "done",
        };
    }

    private static string Words(TextTemplate text, bool said) => string.Concat(text.Parts.Select(p => p switch
    {
        TextPart.Words words => said ? words.Text : "",
        TextPart.Value value => $"{{{value.Expression.Text} in {value.Unit.Symbol}}}",
        _ => "",
    }));

    private static string Words(Condition condition) => condition switch
    {
        Condition.Shows shows => Number($"{shows.Item.Name} {Sign(shows.Comparison)} {shows.Value:G9}"),
        Condition.ShowsWord shows => Number($"{shows.Item.Name} {shows.Word} ({shows.From:G9}..{shows.To:G9})"),
        Condition.Lit lit => $"{lit.Item.Name} lit",
        Condition.PositionIs position => $"{position.Item.Name} = {position.Position}",
        Condition.SignHolds sign => $"sign '{sign.Sign.Name}'",
        Condition.Compare compare => Number($"({compare.Expression.Text}) {Sign(compare.Comparison)} {compare.Value:G9}"),
        Condition.Known known => $"({known.Expression.Text}) known",
        Condition.OneInReach one => $"in reach ({string.Join(" | ", one.Cases.Select(c => Words(c.Condition)))})",
        Condition.Not not => $"not {Words(not.Inner)}",
        Condition.All all => $"({string.Join(" and ", all.Parts.Select(Words))})",
        Condition.Any any => $"({string.Join(" or ", any.Parts.Select(Words))})",
        _ => "?",
    };

    private static string Words(FactCondition condition) => condition switch
    {
        FactCondition.Holds holds => $"'{holds.Fact.Name}'",
        FactCondition.Number number => Words(number.Condition),
        FactCondition.Not not => $"not {Words(not.Inner)}",
        FactCondition.All all => $"({string.Join(" and ", all.Parts.Select(Words))})",
        FactCondition.Any any => $"({string.Join(" or ", any.Parts.Select(Words))})",
        _ => "?",
    };

    private static string Sign(Comparison comparison) => comparison switch
    {
        Comparison.AtLeast => ">=",
        Comparison.AtMost => "<=",
        Comparison.MoreThan => ">",
        Comparison.LessThan => "<",
        _ => "=",
    };

    private static string Number(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
