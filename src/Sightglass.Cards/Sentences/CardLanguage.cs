using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>A language that cards can be written in: nothing but tables. The parser knows no word of any language.</summary>
public sealed class CardLanguage
{
    private readonly FrozenDictionary<Operation, ImmutableArray<SentenceForm>> _byOperation;
    private readonly FrozenDictionary<FormPlace, ImmutableArray<SentenceForm>> _byPlace;

    public CardLanguage(string name, ImmutableArray<SentenceForm> forms, ImmutableArray<NameForm> names, SmallWords small, LintWords lint)
    {
        (Name, Forms, NameForms, Small, Lint) = (name, forms, names, small, lint);
        _byOperation = forms.GroupBy(f => f.Operation).ToFrozenDictionary(g => g.Key, g => g.ToImmutableArray());
        _byPlace = forms.GroupBy(f => f.Place).ToFrozenDictionary(g => g.Key, g => g.ToImmutableArray());
        Labels = [.. forms.Where(f => f.Place is FormPlace.Head or FormPlace.Notice).Select(f => f.Pattern.Leading).Where(l => l.Length > 0)];
    }

    public string Name { get; }

    /// <summary>The table of sentences.</summary>
    public ImmutableArray<SentenceForm> Forms { get; }

    /// <summary>The table of ways to say names.</summary>
    public ImmutableArray<NameForm> NameForms { get; }

    public SmallWords Small { get; }

    public LintWords Lint { get; }

    /// <summary>The words with which head lines and notices begin.</summary>
    public ImmutableArray<ImmutableArray<string>> Labels { get; }

    public ImmutableArray<SentenceForm> At(FormPlace place) => _byPlace.GetValueOrDefault(place, []);

    public ImmutableArray<SentenceForm> Of(Operation operation) => _byOperation.GetValueOrDefault(operation, []);

    /// <summary>The row with which an operation is printed: the first whose gaps are just these; null where the language lacks it.</summary>
    public SentenceForm? FormFor(Operation operation, IEnumerable<string> gaps)
    {
        HashSet<string> filled = [.. gaps];
        ImmutableArray<SentenceForm> rows = Of(operation);
        return rows.FirstOrDefault(f => filled.IsSubsetOf(f.Pattern.SlotNames) && filled.IsSupersetOf(f.Pattern.Required)) ?? rows.FirstOrDefault();
    }

    /// <summary>What lint and the compiler should know about an operation.</summary>
    public FormHints HintsOf(Operation operation) => Of(operation).FirstOrDefault()?.Hints ?? FormHints.None;
}
