using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads the keys that stand once in a book.</summary>
internal static class HeadReader
{
    public static ClassBook Read(Sections sections, Span first, ReadContext context)
    {
        MapReader map = new(sections.Head, first, "the book", context);
        if (!context.Found.AnyDamage)
        {
            map.Required("book", "NAME");
        }

        return new ClassBook
        {
            Title = map.Text("book", "?"),
            Edition = map.Text("edition", "1"),
            Notice = map.Text("notice"),
            Railroad = map.Text("railroad"),
            Length = map.Positive("length", Dimension.Metre, 20),
            Width = map.Positive("width", Dimension.Metre, 3.1),
            WalkStart = map.Choice("walk starts", "right", "left") == "left" ? Side.Left : Side.Right,
            InService = map.Name("in service", NameUse.Situation),
            ShownIn = Units(map.List("shown in"), context),
            Hauling = HaulingReader.Read(map.Take("hauling"), first, context),
            MakingUp = MakingUpReader.Read(map.Take("making up"), context),
        };
    }

    private static ImmutableDictionary<Dimension, Unit> Units(ImmutableArray<YamlScalar> symbols, ReadContext context)
    {
        var units = ImmutableDictionary.CreateBuilder<Dimension, Unit>();
        foreach (YamlScalar s in symbols)
        {
            if (UnitTable.Find(s.Value) is not { } unit)
            {
                context.Add(BookMessages.UnknownUnit(s.Span, s.Value, UnitTable.Symbols));
            }
            else if (!units.TryAdd(unit.Dimension, unit))
            {
                context.Add(BookMessages.TwoUnits(s.Span, s.Value, units[unit.Dimension].Symbol, unit.Dimension.ToString()));
            }
        }

        return units.ToImmutable();
    }
}
