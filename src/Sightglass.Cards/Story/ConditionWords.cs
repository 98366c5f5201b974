using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Story;

/// <summary>Says conditions in the words of a language's table, with the names of the items they came to mean.</summary>
public sealed class ConditionWords(CardLanguage language)
{
    private readonly Tongue _tongue = Tongue.Spoken;

    public string Say(Condition condition) => condition switch
    {
        Condition.Shows shows => Sentence(OfReading(shows.Comparison), ("item", Named(shows.Item.Name)), ("value", Amount(shows.Value, shows.Unit))),
        Condition.ShowsWord shows => Sentence(Operation.ShowsWord, ("item", Named(shows.Item.Name)), ("word", Word(shows.Word, shows.Item.Name))),
        Condition.Lit lit => Sentence(Operation.IsLit, ("item", Named(lit.Item.Name))),
        Condition.PositionIs position => Sentence(Operation.PositionIs, ("item", Named(position.Item.Name)), ("position", Word(position.Position, position.Item.Name))),
        Condition.SignHolds sign => Shown(sign.Sign.Name),
        Condition.Compare compare => Sentence(OfCalculation(compare.Comparison), ("calculation", compare.Expression.Text), ("value", Amount(compare.Value, compare.Unit))),
        Condition.Known known => Sentence(Operation.IsKnown, ("calculation", known.Expression.Text)),
        Condition.OneInReach one => Say(one.Cases[0].Condition),
        Condition.Not { Inner: Condition.ShowsWord shows } => Sentence(Operation.ShowsNotWord, ("item", Named(shows.Item.Name)), ("word", Word(shows.Word, shows.Item.Name))),
        Condition.Not { Inner: Condition.Lit lit } => Sentence(Operation.IsDark, ("item", Named(lit.Item.Name))),
        Condition.Not { Inner: Condition.PositionIs position } => Sentence(Operation.PositionIsNot, ("item", Named(position.Item.Name)), ("position", Word(position.Position, position.Item.Name))),
        Condition.Not { Inner: Condition.SignHolds sign } when !StartsWithArticle(sign.Sign.Name) => Sentence(Operation.NoSign, ("sign", Shown(sign.Sign.Name))),
        Condition.Not not => string.Format(null, language.Small.NotSo, Say(not.Inner)),
        Condition.All all => string.Join($" {language.Small.And} ", all.Parts.Select(Say)),
        Condition.Any any => string.Join($" {language.Small.Or} ", any.Parts.Select(Say)),
        _ => "",
    };

    /// <summary>A name with its article, a side behind a comma told as a side.</summary>
    public string Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string told = WithSide(Shown(name));
        return StartsWithArticle(told) ? told : language.WithArticle(told);
    }

    /// <summary>A name of the book in the language that is spoken.</summary>
    internal string Shown(string name) => _tongue.OfBook(name);

    /// <summary>A position, or a word of a scale, of an item in the language that is spoken.</summary>
    public string Word(string word, string item) => language.Agreeing(_tongue.WaysOf(word), Shown(item));

    /// <summary>A number with its unit, as the language's sentences take it.</summary>
    public static string Amount(double si, Unit unit) => QuantityFormat.Text(si, unit).Replace('\u202F', ' ');

    private static Operation OfReading(Comparison comparison) => comparison switch
    {
        Comparison.AtLeast => Operation.ShowsAtLeast,
        Comparison.AtMost => Operation.ShowsAtMost,
        Comparison.MoreThan => Operation.ShowsMoreThan,
        Comparison.LessThan => Operation.ShowsLessThan,
        _ => Operation.ShowsExactly,
    };

    private static Operation OfCalculation(Comparison comparison) => comparison switch
    {
        Comparison.AtLeast => Operation.IsAtLeast,
        Comparison.AtMost => Operation.IsAtMost,
        Comparison.MoreThan => Operation.IsMoreThan,
        _ => Operation.IsLessThan,
    };

    private bool StartsWithArticle(string name) => language.Small.Articles.Any(a => name.StartsWith(a + " ", StringComparison.Ordinal)); // not of `A truck`

    private string WithSide(string name)
    {
        int comma = name.LastIndexOf(", ", StringComparison.Ordinal);
        string side = comma < 0 ? "" : name[(comma + 2)..];
        NameForm? form = language.NameForms.FirstOrDefault(f => f.Operation == NameOperation.OnSide);
        if (form is null || !language.Small.Sides.Contains(side, StringComparer.Ordinal))
        {
            return name;
        }

        return string.Join(' ', form.Parts.Select(p => p == "{name}" ? name[..comma] : p == "{side}" ? side : p));
    }

    private string Sentence(Operation operation, params (string Gap, string Text)[] filled)
    {
        SentenceForm? form = language.FormFor(operation, filled.Select(f => f.Gap));
        return form is null ? string.Join(' ', filled.Select(f => f.Text)) : language.Joined(PatternPrinter.Print(form.Pattern, gap => filled.FirstOrDefault(f => f.Gap == gap).Text));
    }
}
