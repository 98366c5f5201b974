using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Lint;
using Sightglass.Cards.Names;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards;

/// <summary>Looks whether a card is written as good procedures are: twenty rules, who may operate what, and who is protected.</summary>
public static class CardLint
{
    private static readonly ImmutableArray<LintRule> s_rules =
    [
        new OneActionRule(), new VerbFirstRule(), new ConditionFirstRule(), new PositiveRule(), new ActiveRule(),
        new LengthRule(), new NoticePlaceRule(), new NoticeActionRule(), new NoticePartsRule(), new NumberRule(),
        new PlaceRule(), new ActorRule(), new ExpectedIndicationRule(), new RepeatRule(), new TimeLimitRule(),
        new AlternativesRule(), new AnyOrderRule(), new ReachableRule(), new WithinReachRule(), new AuthorityRule(), new HazardRule(), new HeldRule(),
    ];

    /// <summary>Reports what the rules say. Rules 17 and parts of 19 are errors of reading and come from <see cref="CardReader"/>.</summary>
    /// <param name="card">As read; of a card with errors only the wording is checked.</param>
    /// <param name="book">The book it was read against.</param>
    /// <param name="found">Takes L001…L020 C060…C065 and C075.</param>
    public static void Check(Card card, ClassBook book, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(card);
        Check(card, new CardNames(book, card.Language), found);
    }

    /// <summary>As the other, with the book's names made once for many cards.</summary>
    public static void Check(Card card, CardNames names, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(found);
        DiagnosticList own = [];
        LintContext context = new(card, names, own);
        foreach (LintRule rule in s_rules)
        {
            rule.Check(context);
        }

        found.AddRange(own.DistinctBy(d => (d.Code, d.Span.Start, d.Span.Length)));
    }
}
