using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Lint;

/// <summary>Not one of the twenty: who operates a control may do so, has the permission it needs and tells who must know.</summary>
internal sealed class AuthorityRule() : LintRule(0)
{
    public override void Check(LintContext card)
    {
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            if (op.Person is { } person && !program.For.Contains(person))
            {
                card.Found.Add(CardMessages.NotForPerson(op.Span, person.Name));
            }

            ItemChoice? control = op switch
            {
                CardOp.Set set => set.Item,
                CardOp.Hold hold => hold.Item,
                CardOp.Request request => request.What.Item,
                _ => null,
            };
            if (control?.Candidates[0] is { Authority: { } authority } item)
            {
                CheckWho(card, program, op, item, authority);
                CheckPermission(card, program, op, index, item, authority);
                CheckTold(card, program, op, item, authority);
            }
        }
    }

    private static ImmutableArray<Role> Actors(CardProgram program, CardOp op) => op switch
    {
        CardOp.Request request => [request.Role],
        { Person: { } person } => [person],
        _ => program.For,
    };

    private static void CheckWho(LintContext card, CardProgram program, CardOp op, Item item, Authority authority)
    {
        string[] others = [.. Actors(program, op).Select(r => r.Name).Where(r => !authority.Who.Contains(r))];
        if (!authority.Who.IsEmpty && others.Length > 0)
        {
            card.Found.Add(CardMessages.MayNotOperate(op.Span, item.Name, string.Join(", ", authority.Who), string.Join(", ", others), Ask(card, op, authority.Who[0])));
        }
    }

    /// <summary>The sentence that asks somebody who may; null for what nobody can be asked to do.</summary>
    private static string? Ask(LintContext card, CardOp op, string role)
    {
        string? what = op switch
        {
            CardOp.Set => WordList.Squeeze(op.Span.Text).TrimEnd('.'),
            CardOp.Request request => WordList.Squeeze(request.What.Span.Text).TrimEnd('.'),
            _ => null,
        };
        return what is not null && card.Language.Of(Operation.AskRequest) is [{ } form, ..]
            ? PatternPrinter.Print(form.Pattern, gap => gap == "role" ? $"{card.Language.Small.Article} {role}".TrimStart() : PatternPrinter.Small(what))
            : null;
    }

    private static void CheckPermission(LintContext card, CardProgram program, CardOp op, int index, Item item, Authority authority)
    {
        bool needed = authority.Permission is { } role && Actors(program, op).Any(a => a.Name != role);
        bool asked = program.Ops.Take(index).Any(o => o is CardOp.Ask { Control: { } control } && control.Candidates.Contains(item));
        if (needed && !asked)
        {
            card.Found.Add(CardMessages.PermissionNotAsked(op.Span, item.Name, authority.Permission!));
        }
    }

    private static void CheckTold(LintContext card, CardProgram program, CardOp op, Item item, Authority authority)
    {
        IEnumerable<string> told = program.Told.Concat(program.Ops.OfType<CardOp.Tell>().SelectMany(t => t.Roles)).Concat(Actors(program, op)).Select(r => r.Name);
        foreach (string role in authority.Told.Where(r => !told.Contains(r)))
        {
            card.Found.Add(CardMessages.NotTold(op.Span, item.Name, role));
        }
    }
}
