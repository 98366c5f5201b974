using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Format;

/// <summary>Prints sentences by the rows of a language's table.</summary>
public sealed class SentencePrinter(CardLanguage language)
{
    private const string Stops = ".?!:";

    /// <summary>Sentences of a line, one after the other, each with its full stop.</summary>
    public string Line(ImmutableArray<Sentence> sentences)
    {
        Sentence[] all = [.. sentences.SelectMany(s => s.Tails.Prepend(s))];
        return language.Joined(string.Join(' ', all.Select((s, i) => WithStop(s, isLast: i == all.Length - 1))));
    }

    /// <summary>One sentence without its tails and without a full stop.</summary>
    public string Print(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        if (sentence.Operation == Operation.Unread || (Kept(sentence) ?? language.FormFor(sentence.Operation, sentence.Slots.Keys)) is not { } form)
        {
            return sentence.TextAt("text")?.Value ?? "";
        }

        return language.Joined(PatternPrinter.Print(form.Pattern, gap => sentence.Slots.TryGetValue(gap, out Slot? slot) ? Print(slot, form) : null));
    }

    /// <summary>The row by which it was read, where that way of writing it stays.</summary>
    private SentenceForm? Kept(Sentence sentence) =>
        sentence.Form is { } read && read.Has(FormHints.Kept) && read.Operation == sentence.Operation && language.Of(read.Operation).Contains(read) && sentence.Slots.Keys.ToHashSet().SetEquals(read.Pattern.SlotNames) ? read : null;

    public string Print(ConditionPhrase condition) => condition switch
    {
        ConditionPhrase.One one => Print(one.Sentence),
        ConditionPhrase.All all => string.Join($" {language.Small.And} ", all.Parts.Select(Print)),
        ConditionPhrase.Any any => string.Join($" {language.Small.Or} ", any.Parts.Select(Print)),
        ConditionPhrase.Several several => string.Join("; ", several.Parts.Select(Print)),
        _ => "",
    };

    private string WithStop(Sentence sentence, bool isLast)
    {
        string text = PatternPrinter.Capital(Print(sentence));
        bool bare = text.Length == 0 || Stops.Contains(text[^1], StringComparison.Ordinal) || (isLast && language.HintsOf(sentence.Operation).HasFlag(FormHints.NoStop));
        return bare ? text : text + ".";
    }

    private string Print(Slot slot, SentenceForm form) => slot switch
    {
        Slot.Named named => named.Phrase.Text,
        Slot.NamedList list => List(list, form),
        Slot.Text text => text.Value,
        Slot.Amount amount => amount.Written,
        Slot.Count count => count.Number.ToString(CultureInfo.InvariantCulture),
        Slot.StepNumber step => step.Number.ToString(CultureInfo.InvariantCulture),
        Slot.Calculation calculation => calculation.Written,
        Slot.Seen seen => Print(seen.Condition),
        Slot.Done { Sentences: [{ } only] } when form.Operation is not (Operation.AnyOrder or Operation.SameTime or Operation.OneOf or Operation.ForEach) => Nested(only),
        Slot.Done done => Line(done.Sentences).TrimEnd('.'),
        _ => "",
    };

    private string Nested(Sentence sentence) =>
        sentence.Operation == Operation.Unread ? Print(sentence) : PatternPrinter.Small(Print(sentence));

    /// <summary>In a head with commas, in a step with the word for 'and' before the last.</summary>
    private string List(Slot.NamedList list, SentenceForm form)
    {
        string[] names = [.. list.Phrases.Select(p => p.Text)];
        bool and = form.Place is FormPlace.Step && names.Length > 1;
        string before = language.Small.BeforeEachRole.Length > 0 && form.Operation is Operation.Tell or Operation.Stop ? language.Small.BeforeEachRole + " " : "";
        return and ? $"{string.Join($", {before}", names[..^1])} {language.Small.And} {before}{names[^1]}" : string.Join(", ", names);
    }
}
