using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Story;

/// <summary>
/// Tells what was done, operation by operation, in the words of the same table that the card was written in:
/// <c>You closed the aft return valve.</c>
/// </summary>
public sealed class CardStory(CardProgram program, CardLanguage language)
{
    private readonly ConditionWords _words = new(language);

    /// <summary>One operation as a sentence of the past.</summary>
    /// <param name="index">Of the operation in the program.</param>
    /// <param name="held">Whether its condition held, its answer came, its sign was there; true for all others.</param>
    /// <param name="place">Where the person stood, to name the item that a choice came to mean.</param>
    /// <param name="written">Numbers written down so far, for what was said.</param>
    /// <param name="shown">What the instrument showed, already in words, or null.</param>
    /// <param name="reply">For what somebody was asked to do: what came back.</param>
    public string Tell(int index, bool held = true, string? place = null, ReadOnlySpan<double> written = default, string? shown = null, Reply reply = Reply.None) =>
        Tell(program.Ops[index], held, place, written, shown, reply);

    /// <summary>What somebody did who was asked to.</summary>
    /// <param name="index">Of the operation that asks.</param>
    /// <param name="place">Where the person who was asked stood.</param>
    public string TellAsked(int index, string? place) => Tell(((CardOp.Request)program.Ops[index]).What, held: true, place, default, null, Reply.Done);

    /// <summary>Where somebody went who was asked to do something.</summary>
    public string TellAskedWalk(int index, Place place)
    {
        CardOp.Set what = ((CardOp.Request)program.Ops[index]).What;
        return Tell(new CardOp.Go(place) { Step = what.Step, Span = what.Span, Person = what.Person }, held: true, null, default, null, Reply.Done);
    }

    private string Tell(CardOp op, bool held, string? place, ReadOnlySpan<double> written, string? shown, Reply reply)
    {
        (Operation operation, ImmutableArray<(string Gap, string Text)> filled) = Words(op, place, written);
        SentenceForm? form = language.FormFor(operation, filled.Select(f => f.Gap));
        string template = form is null ? "" : held || form.Otherwise.Length == 0 ? form.Past : form.Otherwise;
        string text = Fill(template, op is CardOp.Request ? filled.Add(("answer", language.Small.Replies.GetValueOrDefault(reply, reply.ToString()))) : filled);
        text = shown is null || text.Length == 0 ? text : $"{text} ({string.Format(CultureInfo.InvariantCulture, language.Small.Showed, shown)})";
        string who = op.Person is null ? language.Small.You : PatternPrinter.Capital(_words.Named(op.Person.Name));
        return text.Length == 0 ? "" : language.Joined(WithStop($"{who} {text}{OnTo(op, held)}"));
    }

    private static string WithStop(string text) => text[^1] is '.' or '?' or '!' or '…' ? text : text + ".";

    private (Operation Operation, ImmutableArray<(string Gap, string Text)> Filled) Words(CardOp op, string? place, ReadOnlySpan<double> written) => op switch
    {
        CardOp.Go go => (Operation.Go, [("place", _words.Named(go.Place.Name))]),
        CardOp.Set set => (set.Verb, [Item(set.Item, place), .. Position(set, place), .. Other(set)]),
        CardOp.Hold hold => (hold.Until is null ? Operation.Hold : Operation.HoldUntil, [Item(hold.Item, place), ("position", _words.Word(hold.Position, hold.Item.At(place).Name)), Limit(hold.Seconds), .. Seen(hold.Until, place)]),
        CardOp.Check check => (Operation.Check, Seen(check.Condition, place)),
        CardOp.If branch => (Operation.If, Seen(branch.Condition, place)),
        CardOp.Look { Place: { } at } look => (Operation.LookAt, [("sign", _words.Shown(look.Sign.Name)), ("place", _words.Named(at.Name))]),
        CardOp.Look look => (Operation.Look, [("sign", _words.Shown(look.Sign.Name))]),
        CardOp.Read read => (Operation.Read, [Item(read.Item, place)]),
        CardOp.WaitFor wait => (Operation.Wait, [Limit(wait.Seconds)]),
        CardOp.WaitUntil wait => (Operation.WaitUntil, [Limit(wait.AtMostSeconds), .. Seen(wait.Condition, place)]),
        CardOp.Tell tell => (Operation.Tell, [("roles", Roles(tell.Roles)), ("text", Said(tell.Text, written))]),
        CardOp.Ask { Protection: { } wanted } ask => (Operation.AskProtection, [("role", _words.Named(ask.Role.Name)), ("protection", _words.Shown(wanted.Name))]),
        CardOp.Ask ask => (Operation.AskPermission, [("role", _words.Named(ask.Role.Name)), Item(ask.Control!, place)]),
        CardOp.Request request => (Operation.AskRequest, [("role", _words.Named(request.Role.Name)), ("request", Asked(request))]),
        CardOp.GiveBack back => (Operation.GiveBack, [("protection", _words.Shown(back.Protection.Name))]),
        CardOp.Protect { Item: { } on } protect => (protect.Verb, [Item(on, place)]),
        CardOp.Protect protect => (protect.Verb, [("protection", _words.Named(protect.Protection.Name)), ("place", _words.Named(protect.Place!.Name))]),
        CardOp.Call { Binding: { } bound } call => (Operation.DoCard, [("title", call.Title), ("letter", bound.Variable), ("word", bound.Word)]),
        CardOp.Call call => (Operation.DoCard, [("title", call.Title)]),
        CardOp.Jump jump => (Operation.Jump, [("step", StepAt(jump.Target))]),
        CardOp.Repeat repeat => (Operation.Repeat, [("first", StepAt(repeat.Back)), ("last", Number(repeat.PrintedStep - 1)), .. Seen(repeat.Until, place)]),
        CardOp.Stop => (Operation.Stop, []),
        _ => (Operation.Unread, []),
    };

    /// <summary>What is asked, as an order in small letters.</summary>
    private string Asked(CardOp.Request request)
    {
        (Operation operation, ImmutableArray<(string Gap, string Text)> filled) = Words(request.What, null, default);
        return language.FormFor(operation, filled.Select(f => f.Gap)) is { } form
            ? PatternPrinter.Small(PatternPrinter.Print(form.Pattern, gap => filled.FirstOrDefault(f => f.Gap == gap).Text))
            : "";
    }

    private (string, string) Item(ItemChoice item, string? place) => ("item", _words.Named(item.At(place).Name));

    private ImmutableArray<(string, string)> Position(CardOp.Set set, string? place) => set.Verb == Operation.Turn ? [("position", _words.Word(set.Position, set.Item.At(place).Name))] : [];

    private ImmutableArray<(string, string)> Other(CardOp.Set set) => set.Other is { } other ? [("other", _words.Named(other.Name))] : [];

    private ImmutableArray<(string, string)> Seen(Condition? condition, string? place) =>
        condition is null ? [] : [("condition", _words.Say(condition is Condition.OneInReach one ? At(one, place) : condition))];

    private static Condition At(Condition.OneInReach one, string? place) =>
        (one.Cases.FirstOrDefault(c => place is not null && c.Item.Places.Contains(place)) ?? one.Cases[0]).Condition;

    private static (string, string) Limit(double seconds)
    {
        (double size, string unit) = seconds % 3600 == 0 && seconds > 0 ? (3600.0, "h") : seconds % 60 == 0 && seconds > 0 ? (60.0, "min") : (1.0, "s");
        return ("limit", string.Create(CultureInfo.InvariantCulture, $"{seconds / size:0.###} {unit}"));
    }

    private string Roles(ImmutableArray<Role> roles)
    {
        string[] names = [.. roles.Select(r => _words.Named(r.Name))];
        string before = language.Small.BeforeEachRole.Length > 0 ? language.Small.BeforeEachRole + " " : "";
        return names.Length < 2 ? string.Concat(names) : $"{string.Join($", {before}", names[..^1])} {language.Small.And} {before}{names[^1]}";
    }

    private static string Said(TextTemplate text, ReadOnlySpan<double> written) =>
        written.IsEmpty && text.Parts.Any(p => p is TextPart.Value) ? "…" : text.Say(written);

    private string StepAt(int op) => Number(program.Ops[op].PrintedStep);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Where it went on when it did not hold, if that is another step.</summary>
    private string OnTo(CardOp op, bool held)
    {
        int target = held ? -1 : op switch
        {
            CardOp.Check check => check.Else,
            CardOp.WaitUntil wait => wait.Else,
            CardOp.Look look => look.Else,
            CardOp.Ask ask => ask.Else,
            CardOp.Hold hold => hold.Else,
            CardOp.Request request => request.Else,
            _ => -1,
        };
        bool same = target >= 0 && program.Ops[target].Called?.Depth == op.Called?.Depth;
        if (target < 0 || (same && program.Ops[target].PrintedStep == op.PrintedStep) || language.Of(Operation.Jump).FirstOrDefault() is not { } jump)
        {
            return "";
        }

        Operation kind = program.Ops[target] is CardOp.Done || !same ? Operation.JumpToEnd : Operation.Jump;
        string past = language.Of(kind).FirstOrDefault()?.Past ?? jump.Past;
        return $" {language.Small.And} {Fill(past, [("step", StepAt(target))])}";
    }

    private static string Fill(string template, ImmutableArray<(string Gap, string Text)> filled) =>
        filled.Aggregate(template, (text, f) => text.Replace($"{{{f.Gap}}}", f.Text, StringComparison.Ordinal));
}
