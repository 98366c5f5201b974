using System.Collections.Immutable;
using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>Not one of the twenty: where a card stops, no protection is left behind unsaid. What was asked for is given back on the way; what stays set, as chocks do, the stop says.</summary>
internal sealed class HeldRule() : LintRule(0)
{
    /// <summary>Letters of a word that says something.</summary>
    private const int Shortest = 4;

    private static readonly char[] s_marks = [' ', ',', '.', ':', ';', '\n', '\r'];

    public override void Check(LintContext card)
    {
        ImmutableHashSet<int>?[] held = [];
        CardProgram? of = null;
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            held = program == of ? held : Held(program.Ops);
            of = program;
            if (op is CardOp.Stop stop)
            {
                foreach (CardOp gained in (held[index] ?? []).Order().Select(i => program.Ops[i]).Where(g => !IsSaid(card, stop, g)))
                {
                    card.Found.Add(CardMessages.StopsHolding(op.Span, NameOf(gained)));
                }
            }
        }
    }

    /// <summary>Of each operation, those before it that brought a protection which may be held when it is come to; null where no way leads to it.</summary>
    private static ImmutableHashSet<int>?[] Held(ImmutableArray<CardOp> ops)
    {
        var before = new ImmutableHashSet<int>?[ops.Length];
        Queue<int> open = new([0]);
        before[0] = [];
        while (open.TryDequeue(out int at))
        {
            foreach (int next in PlaceFlow.After(ops[at], at).Distinct())
            {
                ImmutableHashSet<int> after = Apply(ops, at, next, before[at]!);
                ImmutableHashSet<int> joined = before[next] is { } known ? known.Union(after) : after;
                if (before[next] is null || joined.Count > before[next]!.Count)
                {
                    before[next] = joined;
                    open.Enqueue(next);
                }
            }
        }

        return before;
    }

    private static ImmutableHashSet<int> Apply(ImmutableArray<CardOp> ops, int at, int next, ImmutableHashSet<int> before) => ops[at] switch
    {
        CardOp.Ask { Protection: not null } ask => next == ask.Else ? before : before.Add(at), // without the answer nothing is held
        CardOp.Protect { Sets: true } => before.Add(at),
        CardOp.Protect removed => before.Except(before.Where(i => ops[i] is CardOp.Protect set && IsSame(set, removed))),
        CardOp.GiveBack back => before.Except(before.Where(i => ops[i] is CardOp.Ask ask && ask.Protection!.Name == back.Protection.Name)),
        _ => before,
    };

    private static bool IsSame(CardOp.Protect a, CardOp.Protect b) =>
        a.Protection.Name == b.Protection.Name && a.Item?.Candidates[0].Name == b.Item?.Candidates[0].Name && a.Place?.Name == b.Place?.Name;

    private static string NameOf(CardOp op) => op is CardOp.Ask ask ? ask.Protection!.Name : ((CardOp.Protect)op).Protection.Name;

    /// <summary>Whether the step that stops names the protection, or what was done to have it: <c>the wheels stay chocked</c> after <c>Chock the wheels</c>. That it names the item is not enough.</summary>
    private static bool IsSaid(LintContext card, CardOp.Stop stop, CardOp gained)
    {
        ImmutableArray<string> said = WordsOf(stop.Span.Text), item = gained is CardOp.Protect { Item: { } locked } ? [.. locked.Candidates.SelectMany(i => WordsOf(card.Names.Shown(i.Name)))] : [];
        IEnumerable<string> named = WordsOf(card.Names.Shown(NameOf(gained))).Where(w => !card.Names.Nouns.Contains(w)), done = gained is CardOp.Protect { Place: null } ? WordsOf(gained.Span.Text).Except(item) : [];
        return named.Concat(done).Any(w => said.Any(s => s.StartsWith(StemOf(w), StringComparison.Ordinal)));
    }

    private static ImmutableArray<string> WordsOf(string text) => [.. text.ToLowerInvariant().Split(s_marks, StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length >= Shortest)];

    /// <summary>What the forms of a word have in common: <c>chock</c> and <c>chocked</c>, <c>calce</c> and <c>calzadas</c>.</summary>
    private static string StemOf(string word) => word[..(word.Length > 5 ? 4 : 3)];
}
