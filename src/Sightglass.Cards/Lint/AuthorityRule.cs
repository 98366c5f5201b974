using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

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

    private static ImmutableArray<Role> Actors(CardProgram program, CardOp op) => op.Person is { } person ? [person] : program.For;

    private static void CheckWho(LintContext card, CardProgram program, CardOp op, Item item, Authority authority)
    {
        string[] others = [.. Actors(program, op).Select(r => r.Name).Where(r => !authority.Who.Contains(r))];
        if (!authority.Who.IsEmpty && others.Length > 0)
        {
            card.Found.Add(CardMessages.MayNotOperate(op.Span, item.Name, string.Join(", ", authority.Who), string.Join(", ", others)));
        }
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
