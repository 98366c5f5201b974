using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>In which order what is coupled, and under which protection: from the order of the book, who may handle each thing, and what the book calls dangerous at it.</summary>
internal static class CouplingOrder
{
    public static ImmutableArray<CouplingStep> Of(ClassBook coupled, ImmutableArray<TrainJoint> joints)
    {
        ImmutableArray<LineUse> uses = coupled.MakingUp?.Lines ?? [];
        return
        [
            .. joints.SelectMany(j => j.Lines.Where(l => l.Coupling is not null).Select(l => (j.Ahead, Line: l))).GroupBy(l => l.Line.Line)
                .OrderBy(g => TrainJoints.Rank(uses, g.Key)).ThenBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => Step(coupled, g.Key, [.. g])),
        ];
    }

    private static CouplingStep Step(ClassBook coupled, string line, ImmutableArray<(int Ahead, JointLine Line)> there)
    {
        HashSet<string> items = [.. there.SelectMany(t => new[] { t.Line.Coupling!.Name, t.Line.Ahead!.Name, t.Line.Behind!.Name })];
        HashSet<string> places = [.. there.SelectMany(t => t.Line.Coupling!.Places).Where(p => IsBetween(coupled, p))];
        Hazard[] hazards = [.. coupled.HazardsInOrder.Where(h => h.Items.Any(items.Contains) || (h.IsStanding && h.Places.Any(places.Contains)))];
        return new(
            line,
            [.. there.Select(t => t.Ahead)],
            there[0].Line.Coupling!,
            [.. hazards.Select(h => h.Protection).OfType<string>().Distinct(StringComparer.Ordinal).Select(p => coupled.Protections.GetValueOrDefault(p)).OfType<Protection>().OrderBy(p => p.Span)],
            hazards.OrderByDescending(h => h.Caution.Word).ThenBy(h => h.Span).FirstOrDefault());
    }

    /// <summary>Whether somebody at a place stands between vehicles: it is on the ground, and not beside them.</summary>
    private static bool IsBetween(ClassBook coupled, string place) =>
        coupled.Places.TryGetValue(place, out Place? p) && p.OnGround && Math.Abs(p.Position.Y) < coupled.Width / 2;
}
