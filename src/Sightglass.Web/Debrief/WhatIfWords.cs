using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World;

namespace Sightglass.Web.Debrief;

/// <summary>Says and offers the acts of a what-if.</summary>
internal static class WhatIfWords
{
    /// <summary>The sort of act as it is chosen.</summary>
    public static string Name(WhatIfDeed deed) => deed switch
    {
        WhatIfDeed.Walk => Say.It("goes to"),
        WhatIfDeed.Put => Say.It("puts"),
        WhatIfDeed.Ask => Say.It("asks for"),
        WhatIfDeed.GiveBack => Say.It("gives back"),
        WhatIfDeed.Tell => Say.It("tells it to"),
        WhatIfDeed.Report => Say.It("reports"),
        _ => Say.It("says to be done"),
    };

    /// <summary>What it can be done to, in names of the book; empty where it cannot be done in this drill.</summary>
    public static IEnumerable<string> Choices(BoundDrill drill, WhatIfDeed deed)
    {
        ClassBook book = drill.Plan.Book;
        return deed switch
        {
            WhatIfDeed.Walk => book.Places.Values.OrderBy(p => p.Span).Select(p => p.Name),
            WhatIfDeed.Put => Controls(drill).Select(i => i.Name),
            WhatIfDeed.Ask => Asked(book).Concat(Controls(drill).Where(i => i.Authority?.Permission is not null).Select(i => i.Name)),
            WhatIfDeed.GiveBack => Asked(book),
            WhatIfDeed.Tell => book.Roles.Keys.Where(r => r != drill.Drill.Role),
            WhatIfDeed.Report => drill.Drill.Reports.Select(r => r.Name),
            _ => [""],
        };
    }

    /// <summary>A choice as it is read: a control with where it is.</summary>
    public static string Choice(WhatIfDeed deed, string name) => Say.Begin(Say.Book(name));

    /// <summary>The act by the trainee.</summary>
    public static WhatIfAct Make(BoundDrill drill, WhatIfDeed deed, string on, string to) => new(
        1,
        deed switch
        {
            WhatIfDeed.Walk => new WorldAction.Walk(drill.Person, on),
            WhatIfDeed.Put => new WorldAction.Operate(drill.Person, on, to),
            WhatIfDeed.Ask => new WorldAction.Ask(drill.Person, on),
            WhatIfDeed.GiveBack => new WorldAction.GiveBack(drill.Person, on),
            WhatIfDeed.Tell => new WorldAction.Tell(drill.Person, on, Say.It("what is the matter")),
            WhatIfDeed.Report => new WorldAction.Report(drill.Person, on),
            _ => new WorldAction.Declare(drill.Person),
        });

    /// <summary>An act as a line.</summary>
    public static string Of(WhatIfAct act) => act.Does switch
    {
        WorldAction.Walk w => Say.With($"goes to {w.Place}"),
        WorldAction.Operate o => Say.With($"puts {o.Item} to {new PositionWord(o.Item, o.Position)}"),
        WorldAction.Ask a => Say.With($"asks for {a.For}"),
        WorldAction.GiveBack g => Say.With($"gives back {g.Protection}"),
        WorldAction.Tell t => Say.With($"tells it to the {t.Role}"),
        WorldAction.Report r => Say.With($"reports: {r.Finding}"),
        _ => Say.It("says to be done"),
    };

    /// <summary>Positions of a control.</summary>
    public static IEnumerable<string> Positions(BoundDrill drill, string control) => drill.Plan.Book.Items.TryGetValue(control, out Item? item) ? item.Positions : [];

    private static IEnumerable<Item> Controls(BoundDrill drill) => drill.Plan.Book.ItemsInOrder.Where(i => !i.Places.IsEmpty && drill.Plan.Items[i.Name].Position is not null).OrderBy(i => i.Name, StringComparer.Ordinal);

    private static IEnumerable<string> Asked(ClassBook book) => book.Protections.Values.Where(p => p.Sort == ProtectionSort.Asked).Select(p => p.Name);
}
